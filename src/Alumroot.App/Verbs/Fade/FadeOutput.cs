using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Permanence.Dose;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Verbs.Fade;

/// <summary>The answers of <c>fade</c>.</summary>
internal static class FadeOutput
{
    private static readonly string[] Heads = ["series", "model", "de", "dose_mlxh", "dose_mlxh_low", "dose_mlxh_high", "class", "class_low", "class_high", "bound", "category"];

    internal static void WriteJson(IReadOnlyList<SampleFound> samples, TextWriter to) => to.WriteLine(Json.Text(new
    {
        Series = samples.Select(s => new
        {
            s.Series,
            Model = s.Model is { } m ? FadingWords.Of(m) : null,
            Why = FadingWords.Why(s),
            Criteria = s.Criteria.Select(c => new
            {
                De = c.DeltaE,
                DoseMlxh = R(c.DoseMegaluxHours),
                Class = R(c.Class),
                c.Bound,
                c.Reached,
            }),
            Category = FadingWords.CategoryNumber(s.Category),
            CategoryNote = FadingWords.Category(s.Category),
            s.ReadingCount,
            s.StripCount,
            MostDoseMlxh = s.MostDoseMegaluxHours,
        }),
    }));

    internal static void WriteCsv(IReadOnlyList<SampleFound> samples, TextWriter to)
    {
        to.Write(Csv.Line([.. Heads]));
        foreach (SampleFound s in samples)
            foreach (CriterionFound c in s.Criteria)
                to.Write(Csv.Line([s.Series, s.Model is { } m ? FadingWords.Of(m) : null, c.DeltaE, .. Cells(c.DoseMegaluxHours), .. Cells(c.Class), c.Bound is { } b ? Json.Name(b) : null, FadingWords.CategoryNumber(s.Category)]));
    }

    internal static void WriteText(IReadOnlyList<SampleFound> samples, TextWriter to)
    {
        foreach (SampleFound s in samples)
        {
            to.WriteLine($"{s.Series}: {(s.Model is { } m ? FadingWords.Of(m) : "not fitted")}, {s.StripCount} strips, {s.ReadingCount} readings");
            to.WriteLine($"  why          {FadingWords.Why(s)}");
            foreach (CriterionFound c in s.Model is null ? [] : s.Criteria)
            {
                to.WriteLine(FormattableString.Invariant($"  dE {c.DeltaE:0.0}       {FadingWords.Dose(c, s.MostDoseMegaluxHours)}"));
                to.WriteLine($"               {FadingWords.Class(c)}");
            }
            to.WriteLine($"  category     {FadingWords.Category(s.Category)}");
            foreach ((CriterionFound c, string what) in s.Criteria.Zip(FadingWords.Changes))
                if (c.DoseMegaluxHours is { } dose)
                {
                    to.WriteLine($"  {what} after about");
                    foreach (string line in FadingWords.Years(dose)) to.WriteLine($"    {line}");
                }
            if (s.Criteria[0].DoseMegaluxHours is not null)
            {
                to.WriteLine("  Longer, on a bright wall");
                foreach (Extending way in Extending.Of(LightPlace.Find("bright-wall"), s.Criteria[0].Class?.Value)) to.WriteLine($"    {FadingWords.Extended(way)}");
            }
            to.WriteLine();
        }
        to.WriteLine("dE 1.7 is grey scale 4, just noticeable; 3.4 is grey scale 3 (ISO 105-A02). Spans hold nine times in ten, if the light of the place is like that of the test; the class holds better than the dose.");
    }

    private static Estimate? R(Estimate? e) => e is { } v ? new Estimate(R(v.Value), R(v.Low), R(v.High)) : null;

    private static object?[] Cells(Estimate? e) => e is { } v ? [R(v.Value), R(v.Low), R(v.High)] : [null, null, null];

    private static double R(double x) => x == 0 || !double.IsFinite(x) ? x : Math.Round(x, Math.Clamp(5 - (int)Math.Ceiling(Math.Log10(Math.Abs(x))), 0, 12));
}
