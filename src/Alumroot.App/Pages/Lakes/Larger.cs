using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Pages.Lakes;

/// <summary>Ways out of a vessel that is too small for the froth.</summary>
public static class Larger
{
    /// <summary>A vessel that holds the froth, as one would type it.</summary>
    public static string LargerVessel(LakePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Typed(PlanNumbers.VesselLitres(plan.LeastVesselLitres), "L");
    }

    /// <summary>Into how many equal parts the work must be divided to fit the vessel named.</summary>
    public static int Parts(LakePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Input.Vessel is { Litres: > 0 } vessel ? Math.Max(2, (int)Math.Ceiling(plan.LeastVesselLitres / vessel.Litres)) : 2;
    }

    /// <summary>The request for one of the parts: every amount divided.</summary>
    public static PlanRequest InParts(PlanRequest request, LakePlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        double parts = Parts(plan);
        LakePlanInput input = plan.Input;
        PlanRequest part = request.With(PlanFields.Water, Typed(input.Water.Millilitres / parts, "mL")).With(PlanFields.SaltAmount, Typed(input.Salts[0].Amount.Grams / parts, "g"));
        if (input.DryDyestuff is { } dry) part = part.With(PlanFields.Dry, Typed(dry.Grams / parts, "g")).With(PlanFields.Fresh, null);
        if (input.Salts.Count > 1) part = part.With(PlanFields.SecondSaltAmount, Typed(input.Salts[1].Amount.Grams / parts, "g"));
        if (input.Aim is PlanAim.AlkaliAmount given) part = part.With(PlanFields.AlkaliAmount, Typed(given.Units / parts, input.Alkali.Unit == SubstanceUnit.Gram ? "g" : "mL"));
        return part;
    }

    private static string Typed(double number, string unit) => string.Create(CultureInfo.InvariantCulture, $"{number:0.##} {unit}");
}
