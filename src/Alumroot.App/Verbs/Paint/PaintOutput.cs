using System.Globalization;
using Alumroot.App.Output;
using Alumroot.App.Paints;
using Alumroot.App.Words;
using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;
using Alumroot.Quantities;

namespace Alumroot.App.Verbs.Paint;

/// <summary>The answers of <c>paint</c>.</summary>
internal static class PaintOutput
{
    internal static void WriteJson(PaintAnswer answer, TextWriter to)
    {
        PaintRecipe r = answer.Recipe;
        to.WriteLine(Json.Text(new
        {
            answer.Pigment,
            Medium = r.Ask.Medium.Key,
            PigmentG = r.Ask.PigmentGrams,
            Components = r.Parts.Select(p => new { p.Name, G = Tidy(p.Grams), Ml = Tidy(p.Millilitres) }),
            Pvc = Tidy(r.VolumeFraction),
            Cpvc = Tidy(r.CriticalFraction),
            PvcOverCpvc = Tidy(r.VolumeFraction.Value / r.CriticalFraction.Value),
            UsualPvcOverCpvc = new Estimate(r.Ask.Medium.RatioTypical, r.Ask.Medium.RatioLow, r.Ask.Medium.RatioHigh),
            Film = PaintWords.Film(r),
            WetMl = Tidy(r.WetMillilitres),
            DryMl = Tidy(r.DryMillilitres),
            ShrinkagePercent = Tidy(100 * r.ShrinkageFraction),
            Fill = answer.Fill?.Name,
            FillMl = answer.Fill?.Millilitres,
            Filled = answer.Filled is { } n ? Tidy(n) : (double?)null,
            FilledSpan = answer.FilledSpan is { } span ? Tidy(span) : (Estimate?)null,
            PoursEach = answer.Pours,
            LossPercent = Tidy(answer.Loss.Fraction.Times(100)),
            LossFrom = answer.Loss.Origin,
            CostEach = answer.CostEach is { } each ? Tidy(each) : (double?)null,
            FilmPhLow = r.Ask.Medium.FilmPhLow,
            FilmPhHigh = r.Ask.Medium.FilmPhHigh,
            r.Ask.Medium.TouchDry,
            r.Ask.Medium.ThroughDry,
            Keeping = r.Ask.Medium.Preservative,
            Keeps = KeepingWords.Keeps(r.Ask.Medium, answer.Dose),
            Preservative = answer.Dose is { } dose ? new { dose.What.Key, G = Tidy(dose.Grams), ActivePercent = Tidy(dose.ActiveFraction.Times(100)), dose.Working, Text = KeepingWords.Works(dose) } : null,
            Tints = answer.Tints?.Tints.Select(t => new { PigmentPercent = 100 * t.PigmentFraction, L = new Estimate(Tidy(t.Colour.L), Tidy(t.Low.L), Tidy(t.High.L)), A = new Estimate(Tidy(t.Colour.A), Tidy(t.Low.A), Tidy(t.High.A)), B = new Estimate(Tidy(t.Colour.B), Tidy(t.Low.B), Tidy(t.High.B)), WithinDeltaE2000 = Tidy(t.WithinDeltaE2000) }),
            TintsFrom = answer.Tints?.Basis,
            OrderOfWork = PaintWords.Work(r.Ask.Medium),
            Cautions = PaintWords.Mind(r.Ask.Medium),
            answer.Assumptions,
            CakeG = r.Ask.CakeWaterFraction > 0 ? Tidy(r.Ask.CakeGrams) : (double?)null,
            WaterToLeaveG = r.Ask.CakeWaterFraction > 0 ? Tidy(r.WaterToLeaveGrams) : (double?)null,
            Suits = answer.Suits is { } suits ? new { Colour = suits.Colour.Key, Rating = PaintWords.Of(suits.Rating), Reasons = suits.Reasons.Select(x => new { x.Key, Rating = PaintWords.Of(x.Rating), Text = SuitWords.Of(x, suits), x.Sources }) } : null,
        }));
    }

    internal static void WriteText(PaintAnswer answer, TextWriter to)
    {
        PaintRecipe r = answer.Recipe;
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Figure(r.Ask.PigmentGrams)} g {answer.Pigment} in {r.Ask.Medium.Name}"));
        to.WriteLine();
        int width = r.Parts.Max(p => p.Name.Length);
        foreach (PaintPart p in r.Parts) to.WriteLine($"  {p.Name.PadRight(width)}  {Figure(p.Grams.Value),7} g  ({Figure(p.Grams.Low)} to {Figure(p.Grams.High)})  {Figure(p.Millilitres.Value),7} ml");
        to.WriteLine();
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Pigment {100 * r.VolumeFraction.Value:0} % of the dry film by volume, critical {100 * r.CriticalFraction.Value:0} % ({100 * r.CriticalFraction.Low:0} to {100 * r.CriticalFraction.High:0}): {PaintWords.Film(r)}."));
        to.WriteLine($"Wet {Figure(r.WetMillilitres.Value)} ml, dry {Figure(r.DryMillilitres.Value)} ml; it shrinks by {Figure(100 * r.ShrinkageFraction)} %.");
        if (answer is { Fill: { } fill, Filled: { } filled }) to.WriteLine($"Fills {Figure(filled)} ({PaintFigures.Span(answer.FilledSpan!.Value)}) {fill.Name} of {Figure(fill.Millilitres)} ml{(answer.Pours > 1 ? $", each poured {answer.Pours} times" : "")}.");
        to.WriteLine(KeepingWords.Loss(answer));
        if (answer.Dose is { } dose) to.WriteLine($"Preservative: {KeepingWords.Take(dose)} {KeepingWords.Works(dose)}");
        to.WriteLine($"Keeps, assumed: {KeepingWords.Keeps(r.Ask.Medium, answer.Dose)}.");
        if (answer.CostEach is { } each) to.WriteLine($"Cost of each: {Figure(each)}, {KeepingWords.CostParts(answer)}.");
        if (answer.Tints is { } told)
        {
            foreach (Alumroot.Colour.Film.ExpectedTint tint in told.Tints) to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Tint of {100 * tint.PigmentFraction:0.##} %: {TintWords.Numbers(tint)}, within {tint.WithinDeltaE2000:0.0}."));
            to.WriteLine(told.Basis);
        }
        if (PaintWords.Cake(r) is { } cake) to.WriteLine(cake);
        if (answer.Suits is { } suits)
        {
            to.WriteLine($"For {suits.Colour.Name}: {PaintWords.Of(suits.Rating)}.");
            foreach (SuitReason reason in suits.Reasons) to.WriteLine($"  {SuitWords.Of(reason, suits)}");
        }
        to.WriteLine($"Touch dry: {r.Ask.Medium.TouchDry}. Through: {r.Ask.Medium.ThroughDry}.");
        to.WriteLine();
        to.WriteLine("Work");
        foreach (string line in PaintWords.Work(r.Ask.Medium)) to.WriteLine($"  {line}");
        to.WriteLine("Mind");
        foreach (string line in PaintWords.Mind(r.Ask.Medium)) to.WriteLine($"  {line}");
        foreach (string line in answer.Assumptions) to.WriteLine(line);
    }

    private static Estimate Tidy(Estimate e) => new(Tidy(e.Value), Tidy(e.Low), Tidy(e.High));

    private static double Tidy(double x) => x == 0 ? 0 : Math.Round(x, Math.Clamp(5 - (int)Math.Ceiling(Math.Log10(Math.Abs(x))), 0, 12));

    private static string Figure(double x) => x >= 100 ? x.ToString("0", CultureInfo.InvariantCulture) : x >= 10 ? x.ToString("0.0", CultureInfo.InvariantCulture) : x.ToString("0.00", CultureInfo.InvariantCulture);
}
