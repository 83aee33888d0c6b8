using Alumroot.Quantities;

namespace Alumroot.Chemistry.Process;

/// <summary>A test sieve.</summary>
/// <param name="OpeningMicrometres">Nominal opening.</param>
/// <param name="MainSize">Whether it is one of the principal sizes (R 20/3), which stand in most sets.</param>
public sealed record TestSieve(double OpeningMicrometres, bool MainSize);

/// <summary>The sieves in use for pigments: metal wire cloth by ISO 565 and ISO 3310-1, from 1 mm down.</summary>
public static class SieveSeries
{
    private static readonly Lazy<IReadOnlyList<TestSieve>> Loaded = new(() =>
    [
        .. Constants.EmbeddedConstants.Table("sieves.csv").Rows
            .Select(r => new TestSieve(r.Number("opening_um"), r["main_size"] == "yes")).OrderByDescending(s => s.OpeningMicrometres),
    ]);

    /// <summary>All of them, coarsest first.</summary>
    public static IReadOnlyList<TestSieve> All => Loaded.Value;

    /// <summary>The sieve of this opening, or null when the standards have none.</summary>
    public static TestSieve? Find(double openingMicrometres) => All.FirstOrDefault(s => s.OpeningMicrometres == openingMicrometres);
}

/// <summary>Where a part of the powder lies in size. Closed: nobody adds another kind.</summary>
public abstract record SizeAt
{
    private SizeAt() { }

    /// <summary>Between two of the sieves used.</summary>
    /// <param name="Micrometres">Read off a straight line over the logarithm of the opening; the span is that of the sieves that the part surely lies between, the scale considered: 0 or infinite where they do not tell.</param>
    public sealed record Between(Estimate Micrometres) : SizeAt;

    /// <summary>Finer than the finest sieve used.</summary>
    /// <param name="Micrometres">Its opening.</param>
    public sealed record FinerThan(double Micrometres) : SizeAt;

    /// <summary>Coarser than the coarsest sieve used.</summary>
    /// <param name="Micrometres">Its opening.</param>
    public sealed record CoarserThan(double Micrometres) : SizeAt;
}

/// <summary>How much of a powder passes each sieve.</summary>
/// <param name="Passing">The sieves used, coarsest first, each with the percent by mass that passes it.</param>
/// <param name="D10">The size that a tenth of the mass is finer than.</param>
/// <param name="D50">The size that half of the mass is finer than.</param>
/// <param name="D90">The size that nine tenths of the mass are finer than.</param>
public sealed record SizeCurve(IReadOnlyList<(double OpeningMicrometres, Estimate PassingPercent)> Passing, SizeAt D10, SizeAt D50, SizeAt D90)
{
    /// <summary>The curve of a sieving; null when nothing was on the sieves and in the pan.</summary>
    /// <param name="retained">What stayed on each sieve.</param>
    /// <param name="pan">What fell through all of them.</param>
    /// <param name="scaleStep">The smallest step of the scale.</param>
    /// <exception cref="ArgumentException">A sieve stands twice.</exception>
    public static SizeCurve? Of(IReadOnlyList<(double OpeningMicrometres, Mass Retained)> retained, Mass pan, Mass scaleStep)
    {
        ArgumentNullException.ThrowIfNull(retained);
        (double OpeningMicrometres, Mass Retained)[] sorted = [.. retained.OrderByDescending(r => r.OpeningMicrometres)];
        if (sorted.Zip(sorted.Skip(1)).Any(p => p.First.OpeningMicrometres == p.Second.OpeningMicrometres)) throw new ArgumentException("a sieve stands twice", nameof(retained));
        double all = sorted.Sum(r => r.Retained.Grams) + pan.Grams;
        if (sorted.Length == 0 || all <= 0) return null;
        var passing = new List<(double OpeningMicrometres, Estimate PassingPercent)>();
        double above = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            above += sorted[i].Retained.Grams;
            double percent = 100 * Math.Clamp((all - above) / all, 0, 1);
            // Each weight is rounded to a step; half of it, for as many weights as stand above, adds as its square root.
            double half = 100 * Numerics.Distributions.NormalHalfWidth90 * scaleStep.Grams * Math.Sqrt((i + 1) / 12.0) / all;
            passing.Add((sorted[i].OpeningMicrometres, new Estimate(percent, Math.Max(percent - half, 0), Math.Min(percent + half, 100))));
        }
        return new SizeCurve(passing, At(passing, 10), At(passing, 50), At(passing, 90));
    }

    private static SizeAt At(List<(double OpeningMicrometres, Estimate PassingPercent)> passing, double percent)
    {
        if (passing[0].PassingPercent.Value < percent) return new SizeAt.CoarserThan(passing[0].OpeningMicrometres);
        if (passing[^1].PassingPercent.Value > percent) return new SizeAt.FinerThan(passing[^1].OpeningMicrometres);
        int i = passing.FindLastIndex(p => p.PassingPercent.Value >= percent);
        (double coarse, Estimate more) = passing[i];
        (double fine, Estimate less) = passing[Math.Min(i + 1, passing.Count - 1)];
        double share = more.Value > less.Value ? (percent - less.Value) / (more.Value - less.Value) : 1;
        // A sieve whose own span holds the percent is no end of the span: the next one is. Beyond the sieves used nothing is known.
        int coarser = passing.FindLastIndex(p => p.PassingPercent.Low >= percent), finer = passing.FindIndex(p => p.PassingPercent.High <= percent);
        return new SizeAt.Between(new Estimate(
            fine * Math.Pow(coarse / fine, share),
            finer < 0 ? 0 : passing[finer].OpeningMicrometres,
            coarser < 0 ? double.PositiveInfinity : passing[coarser].OpeningMicrometres));
    }
}
