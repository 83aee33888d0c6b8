using System.Globalization;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Requests;

/// <summary>The same plan in another size: every amount times a factor, all else as it is.</summary>
public static class PlanScaling
{
    /// <summary>The largest and smallest sensible factors (our own limits: what works in a jar may foam over in a tub).</summary>
    public const double Least = 0.01, Most = 100;

    private static readonly string[] Masses = [PlanFields.Dry, PlanFields.Fresh, PlanFields.SaltAmount, PlanFields.SecondSaltAmount];
    private static readonly string[] Volumes = [PlanFields.Water];

    /// <summary>Scales a request; amounts that cannot be read stay as they were typed. The vessel is left out, since another size needs another.</summary>
    public static PlanRequest Times(PlanRequest request, double factor)
    {
        ArgumentNullException.ThrowIfNull(request);
        PlanRequest scaled = request.With(PlanFields.Vessel, null);
        foreach (string field in Masses)
            if (request[field] is { } typed && QuantityReader.ReadMass(typed, FieldRules.ReagentMass) is Parsed<Mass>.Understood mass)
                scaled = scaled.With(field, Text(mass.Value.Grams * factor, "g"));
        foreach (string field in Volumes)
            if (request[field] is { } typed && QuantityReader.ReadVolume(typed, FieldRules.Water) is Parsed<Volume>.Understood volume)
                scaled = scaled.With(field, Text(volume.Value.Millilitres * factor, "mL"));
        if (request[PlanFields.AlkaliAmount] is { } alkali)
        {
            if (QuantityReader.ReadMass(alkali, FieldRules.ReagentMass) is Parsed<Mass>.Understood mass) scaled = scaled.With(PlanFields.AlkaliAmount, Text(mass.Value.Grams * factor, "g"));
            else if (QuantityReader.ReadVolume(alkali, FieldRules.Water) is Parsed<Volume>.Understood volume) scaled = scaled.With(PlanFields.AlkaliAmount, Text(volume.Value.Millilitres * factor, "mL"));
        }
        return scaled;
    }

    private static string Text(double value, string unit)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(value, 1e-6))) - 3);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(value / step) * step:0.#####} {unit}");
    }
}
