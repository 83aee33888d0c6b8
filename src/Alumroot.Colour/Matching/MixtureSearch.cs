using Alumroot.Colour.Colorimetry;
using Alumroot.Quantities;

namespace Alumroot.Colour.Matching;

/// <summary>What the shares of known pigments in a mixture of known colour are. Closed: nobody adds another kind.</summary>
public abstract record Unmixing
{
    private Unmixing() { }

    /// <summary>The shares, each with the span that the colour leaves.</summary>
    /// <param name="Mixture">The mixture.</param>
    public sealed record Known(MixtureFound Mixture) : Unmixing;

    /// <summary>The colour leaves a share wholly open: more pigments than the colour has numbers, or pigments that look alike.</summary>
    /// <param name="Nearest">One of the mixtures that have this colour.</param>
    public sealed record NotDecided(MixtureFound Nearest) : Unmixing;

    /// <summary>No mixture of these pigments has the colour.</summary>
    /// <param name="Nearest">The nearest.</param>
    public sealed record OutOfReach(MixtureFound Nearest) : Unmixing;
}

/// <summary>Searches all sets of at most a few pigments for the mixtures nearest to a colour.</summary>
/// <remarks>Every set is tried, so that the best is not missed; a set in which a pigment sinks to nothing is left to the smaller set without it.</remarks>
public static class MixtureSearch
{
    /// <summary>The largest set that is searched.</summary>
    public const int MostPigments = 5;

    // Less than this cannot be weighed out with the rest, and a further pigment must earn its place; our judgement, no source.
    private const double LeastShare = 0.001, WorthAPigmentDeltaE = 0.05;

    // A first start this good is not tried again from another.
    private const double GoodSum = 0.25;

    private const double WholeSpan = 0.9;

    /// <summary>The nearest mixtures, best first; a mixture with more pigments stands before one with fewer only when it is nearer by 0.05 for each.</summary>
    /// <exception cref="ArgumentException">There are no pigments or aims, or their wavelengths do not fit.</exception>
    public static IReadOnlyList<MixtureFound> Find(MixtureAsk ask)
    {
        Checked(ask);
        int most = Math.Clamp(ask.MostPigments, 1, Math.Min(MostPigments, ask.Pigments.Count));
        var model = new MixtureModel(ask);
        var fit = new MixtureFit(model, most);
        var best = new List<(double Score, int[] Pigments, double[] Shares)>();
        Span<int> set = stackalloc int[most];
        for (int size = 1; size <= most; size++)
        {
            Span<int> chosen = set[..size];
            for (int i = 0; i < size; i++) chosen[i] = i;
            do Try(chosen, model, fit, best, 8 * Math.Max(1, ask.Answers));
            while (Next(chosen, ask.Pigments.Count));
        }
        // The order follows from the known constants; only what is told is drawn.
        MixtureAsk undrawn = ask with { Pigments = [.. ask.Pigments.Select(p => p with { Drawn = [] })] };
        return [.. best.Select(b => (b, Found: Told(undrawn, model, fit, b.Pigments, b.Shares))).OrderBy(t => Score(t.Found)).Take(ask.Answers).Select(t => Told(ask, model, fit, t.b.Pigments, t.b.Shares))];
    }

    /// <summary>The shares of all the pigments asked about in a mixture with the colour of the first aim.</summary>
    /// <param name="ask">Pigments that are in the mixture (five at most), and its colour.</param>
    /// <exception cref="ArgumentException">There are no pigments or aims, more than five pigments, or their wavelengths do not fit.</exception>
    public static Unmixing Unmix(MixtureAsk ask)
    {
        Checked(ask);
        if (ask.Pigments.Count > MostPigments) throw new ArgumentException("At most five pigments are told apart.", nameof(ask));
        var model = new MixtureModel(ask);
        var fit = new MixtureFit(model, ask.Pigments.Count);
        MixtureFound nearest = Find(ask with { MostPigments = ask.Pigments.Count, Answers = 1 })[0];
        int[] all = [.. Enumerable.Range(0, ask.Pigments.Count)];
        (double sum, double[] shares) = Best(all, model, fit, 0);
        MixtureFound whole = Told(ask, model, fit, all, shares);
        if (!double.IsFinite(sum) || whole.WorstDeltaE2000 > nearest.WorstDeltaE2000 + WorthAPigmentDeltaE) whole = nearest;
        return whole.WorstDeltaE2000 > ask.AimWithinDeltaE ? new Unmixing.OutOfReach(whole)
            : whole.Parts.Any(p => p.Fraction.High - p.Fraction.Low > WholeSpan) ? new Unmixing.NotDecided(whole)
            : new Unmixing.Known(whole);
    }

    private static double Score(MixtureFound found) => found.WorstDeltaE2000 + WorthAPigmentDeltaE * found.Parts.Count;

    private static void Try(ReadOnlySpan<int> pigments, MixtureModel model, MixtureFit fit, List<(double Score, int[] Pigments, double[] Shares)> best, int kept)
    {
        (double sum, double[] shares) = Best(pigments, model, fit, LeastShare);
        if (!double.IsFinite(sum)) return;
        double score = Math.Sqrt(sum) + WorthAPigmentDeltaE * pigments.Length;
        if (best.Count == kept && score >= best[^1].Score) return;
        int at = best.FindIndex(b => b.Score > score);
        best.Insert(at < 0 ? best.Count : at, (score, pigments.ToArray(), shares));
        if (best.Count > kept) best.RemoveAt(kept);
    }

    /// <summary>From shares of equal effect, and from equal shares where that does not come near.</summary>
    private static (double Sum, double[] Shares) Best(ReadOnlySpan<int> pigments, MixtureModel model, MixtureFit fit, double least)
    {
        double[] first = new double[pigments.Length];
        for (int i = 0; i < first.Length; i++) first[i] = 1 / Math.Max(1e-9, model.Strength(pigments[i]));
        double total = first.Sum();
        for (int i = 0; i < first.Length; i++) first[i] /= total;
        double sum = fit.Improve(pigments, first, least);
        if (sum < GoodSum || first.Length == 1) return (sum, first);
        double[] second = [.. Enumerable.Repeat(1.0 / first.Length, first.Length)];
        double other = fit.Improve(pigments, second, least);
        return other < sum ? (other, second) : (sum, first);
    }

    private static MixtureFound Told(MixtureAsk ask, MixtureModel model, MixtureFit fit, int[] pigments, double[] shares)
    {
        Lab[] labs = model.Labs(pigments, shares);
        double worst = labs.Zip(ask.Aims, (lab, aim) => Ciede2000.Of(aim.Lab, lab).DeltaE).Max();
        Estimate[] spans = fit.Spans(pigments, shares, ask.AimWithinDeltaE);
        int draws = pigments.Max(p => ask.Pigments[p].Drawn.Count);
        double? within = null;
        if (draws > 0)
        {
            (Estimate[] drawn, within) = fit.Drawn(pigments, shares, labs, ask.AimWithinDeltaE, draws, ask.Seed);
            // Pigments that move the colour alike leave a share open, which draws that begin at one mixture may not find.
            spans = [.. spans.Zip(drawn, (a, b) => new Estimate(a.Value, Math.Min(a.Low, b.Low), Math.Max(a.High, b.High)))];
        }
        MixturePart[] parts = [.. spans.Select((span, i) => new MixturePart(ask.Pigments[pigments[i]].Key, span)).OrderByDescending(p => p.Fraction.Value)];
        return new MixtureFound(parts, labs, worst) { WithinDeltaE2000 = within };
    }

    /// <summary>The next set in the order of a dictionary.</summary>
    private static bool Next(Span<int> chosen, int count)
    {
        int i = chosen.Length - 1;
        while (i >= 0 && chosen[i] == count - chosen.Length + i) i--;
        if (i < 0) return false;
        chosen[i]++;
        for (int j = i + 1; j < chosen.Length; j++) chosen[j] = chosen[j - 1] + 1;
        return true;
    }

    private static void Checked(MixtureAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        if (ask.Pigments.Count == 0 || ask.Aims.Count == 0 || ask.Pigments.Any(p => p.Bands.Count != ask.Nanometres.Count))
            throw new ArgumentException("A search needs pigments with constants at each wavelength, and an aim.", nameof(ask));
    }
}
