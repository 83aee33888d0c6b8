using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.PhRow;

/// <summary>Reckons how much acid or alkali brings each jar of a row to its pH, by the liquor of the plan and its equilibrium, for many draws of what is not known.</summary>
public static class PhRowPlanner
{
    /// <summary>How many draws stand behind each span.</summary>
    public const int Draws = 64;

    // So many tell how far the jars must be filled up.
    private const int DrawsForRoom = 8;

    // All jars are filled up to the same volume: a tenth more than the liquor, or half as much again as the largest middle dose, at most double.
    private const double LeastTopUpShare = 0.1, MostTopUpShare = 1, RoomForDose = 1.5;

    // The strengths of acid and alkali are drawn on a hypercube of their own.
    private const ulong StrengthSeed = 500;

    /// <summary>Plans the row; null when the equations of the liquor do not come to an end.</summary>
    public static PhRowPlan? Plan(PhRowInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        double liquor = input.Liquor.Millilitres, topUp = LeastTopUpShare * liquor;
        if (Row(input, topUp, DrawsForRoom) is not { } row) return null;
        double most = row.Jars.Where(j => j.Dose is RowDose.Acid or RowDose.Alkali).Select(j => j.DoseMillilitres.Value).DefaultIfEmpty(0).Max();
        return Row(input, Math.Clamp(Math.Ceiling(RoomForDose * most), topUp, MostTopUpShare * liquor), Draws);
    }

    private static PhRowPlan? Row(PhRowInput input, double topUpMillilitres, int draws)
    {
        double liquor = input.Liquor.Millilitres, filled = liquor + topUpMillilitres;
        BathModel acid = Bath(input.Acid.Substance), alkali = Bath(input.Alkali.Substance);
        LakePlanInput like = Like(input.Alkali.Substance);
        double[,] cube = LatinHypercube.Make(draws, PlanDraw.Axes, input.Seed), strengths = LatinHypercube.Make(draws, 2, input.Seed + StrengthSeed);
        var baths = new List<RowBath>(draws);
        Span<double> u = stackalloc double[PlanDraw.Axes];
        for (int i = 0; i < draws; i++)
        {
            for (int a = 0; a < u.Length; a++) u[a] = cube[i, a];
            var draw = PlanDraw.At(SolidIdea.Hydroxide, like, u);
            var bath = new RowBath(acid, input.Acid.UnitsPerMillilitre * PlanDraw.Skewed(input.Acid.Substance.Strength, strengths[i, 0]), alkali, input.Alkali.UnitsPerMillilitre * PlanDraw.Skewed(input.Alkali.Substance.Strength, strengths[i, 1]), draw);
            if (bath.IsSolved) baths.Add(bath);
        }
        // A few draws at the edge of what can be may fail; where many do, nothing is claimed.
        if (baths.Count < 0.9 * draws) return null;
        return new PhRowPlan(Span([.. baths.Select(b => b.StartPh)]), filled, [.. input.Aims.Select(aim => Jar(aim, baths, topUpMillilitres, MostTopUpShare * liquor))]);

        BathModel Bath(Substance titrant) => new(Like(titrant), 0, 0);

        LakePlanInput Like(Substance titrant) => new()
        {
            DryDyestuff = input.DryGramsPerLitre > 0 ? Mass.FromGrams(input.DryGramsPerLitre * liquor / 1000) : null,
            Water = Volume.FromMillilitres(filled),
            Hardness = input.Hardness,
            HardnessIsAssumed = input.HardnessIsAssumed,
            PlantAcidMilliequivalentsPerGram = input.PlantAcidMilliequivalentsPerGram,
            PlantAcidPk = input.PlantAcidPk,
            LiquorPh = input.LiquorPh,
            Salts = [],
            Alkali = titrant,
            Temperature = input.Temperature,
            Aim = new PlanAim.AlkaliAmount(0),
        };
    }

    private static PhRowJar Jar(Ph aim, IReadOnlyList<RowBath> baths, double topUp, double most)
    {
        // Alkali counts above nothing, acid below it.
        double[] doses = [.. baths.Select(b => b.DoseTo(aim.Value, most)).Where(d => !double.IsNaN(d)).Order()];
        Estimate signed = doses.Length > 0 ? Span(doses) : default;
        if (2 * doses.Length < baths.Count || Math.Abs(signed.Value) > most)
        {
            bool up = aim.Value > baths.Average(b => b.StartPh);
            return new PhRowJar(aim, RowDose.OutOfReach, Estimate.Exact(most), Span([.. baths.Select(b => b.PhWith(up ? most : -most))]), 0);
        }
        Estimate ph = Span([.. baths.Select(b => b.PhWith(signed.Value))]);
        if (signed.Value == 0) return new PhRowJar(aim, RowDose.Nothing, Estimate.Exact(0), ph, topUp);
        Estimate dose = signed.Value > 0 ? new Estimate(signed.Value, Math.Max(0, signed.Low), signed.High) : new Estimate(-signed.Value, Math.Max(0, -signed.High), -signed.Low);
        dose = dose with { High = Math.Min(dose.High, most) };
        return new PhRowJar(aim, signed.Value > 0 ? RowDose.Alkali : RowDose.Acid, dose, ph, Math.Max(0, topUp - dose.Value));
    }

    private static Estimate Span(double[] values)
    {
        Array.Sort(values);
        return new Estimate(Distributions.SortedQuantile(values, 0.5), Distributions.SortedQuantile(values, 0.05), Distributions.SortedQuantile(values, 0.95));
    }
}
