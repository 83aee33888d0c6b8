using Alumroot.Permanence.Dose;
using Alumroot.Permanence.Fading;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Permanence;

/// <summary>A sample of an exposure: what its readings say.</summary>
/// <param name="Sample">What it is.</param>
/// <param name="Found">The fit.</param>
/// <param name="Latest">The latest change of each of its strips.</param>
public sealed record SampleVerdict(ExposedSample Sample, SampleFound Found, IReadOnlyList<StripChange> Latest);

/// <summary>All that is worked out of an exposure: the dose, the fits and what is left to do.</summary>
public sealed class ExposureFound
{
    // Standard deviation of one part of a difference of two halves where a single strip does not tell; judgement.
    private const double UsualDeviation = 0.3;

    private readonly LightTold _light;

    private ExposureFound(ExposureState state, DateTimeOffset now)
    {
        State = state;
        _light = new LightTold(state);
        Now = state.EndedAt ?? now;
        Doses = _light.Until(Now);
        Changes = StripChange.Of(state);
        Series = SeriesOf();
        if (Series.Count == 0) return;
        IReadOnlyList<SampleFound> found = [.. FadingAnalysis.Analyse(Series).Select(Widened)];
        Samples = [.. Asked.Select(s => found.FirstOrDefault(f => f.Series == s.Name) is { } f ? new SampleVerdict(s, f, Latest(s.Name)) : null).OfType<SampleVerdict>()];
    }

    internal ExposureState State { get; }

    /// <summary>Up to when the light was reckoned.</summary>
    internal DateTimeOffset Now { get; }

    /// <summary>The dose so far by every way there is, the one that is used first.</summary>
    internal IReadOnlyList<LightDose> Doses { get; }

    /// <summary>The changes of all strips.</summary>
    internal IReadOnlyList<StripChange> Changes { get; }

    /// <summary>The changes against dose, references too; empty while no dose is known.</summary>
    internal IReadOnlyList<FadingSeries> Series { get; }

    /// <summary>What the samples' readings say.</summary>
    internal IReadOnlyList<SampleVerdict> Samples { get; } = [];

    private IEnumerable<ExposedSample> Asked => State.Begun?.Samples.Where(s => LightTold.Reference(s.Name) is null) ?? [];

    /// <summary>Works an exposure out.</summary>
    /// <param name="state">The exposure.</param>
    /// <param name="now">The time; what has ended counts up to its end.</param>
    internal static ExposureFound Of(ExposureState state, DateTimeOffset now) => new(state, now);

    /// <summary>Dose at a reading by the way that is used; null when none is known.</summary>
    internal Estimate? DoseAt(DateTimeOffset at) => _light.At(at)?.MegaluxHours;

    /// <summary>When a dose will have been reached, if the light goes on as it was; null while it is not known, or ended.</summary>
    internal DateTimeOffset? WhenReached(double megaluxHours)
    {
        if (State.EndedAt is not null || Doses is not [var dose, ..] || dose.MegaluxHours.Value <= 0) return null;
        double hours = (Now - State.At).TotalHours * megaluxHours / dose.MegaluxHours.Value;
        return hours < TimeSpan.MaxValue.TotalHours / 1e4 ? State.At.AddHours(hours) : null;
    }

    private List<FadingSeries> SeriesOf()
    {
        var series = new List<FadingSeries>();
        if (State.Begun is null) return series;
        foreach (ExposedSample sample in State.Begun.Samples)
        {
            StripChange[] changes = [.. Changes.Where(c => c.Sample == sample.Name && !c.IsFirst)];
            if (changes.Length == 0) continue;
            double deviation = ColourPath.Of(this, sample.Name).StripDeviation ?? UsualDeviation;
            IReadOnlyList<double> differences = ColourSteps.Differences([.. changes.Select(c => new ColourStep(c.After.L - c.Before.L, c.After.A - c.Before.A, c.After.B - c.Before.B))], deviation);
            var strips = new List<FadingStrip>();
            foreach (IGrouping<int, (StripChange Change, double Difference)> strip in changes.Zip(differences).GroupBy(c => c.First.Strip))
            {
                FadingPoint[] points = [.. strip.Select(c => (c.Difference, Dose: DoseAt(State.Readings[c.Change.Reading].At))).Where(c => c.Dose is { Value: > 0 }).Select(c => new FadingPoint(c.Dose!.Value.Value, c.Difference))];
                if (points.Length > 0) strips.Add(new FadingStrip($"{strip.Key}", points));
            }
            if (strips.Count > 0) series.Add(new FadingSeries(sample.Name, strips));
        }
        return series;
    }

    private StripChange[] Latest(string sample) => [.. Changes.Where(c => c.Sample == sample).GroupBy(c => c.Strip).OrderBy(g => g.Key).Select(g => g.MaxBy(c => c.Reading)!)];

    /// <summary>The doses with what is not known of the light itself; the class does not hang on it.</summary>
    private SampleFound Widened(SampleFound found) =>
        Doses is [var dose, ..] ? found with { Criteria = [.. found.Criteria.Select(c => c with { DoseMegaluxHours = c.DoseMegaluxHours is { } d ? Together(d, dose.MegaluxHours) : null })] } : found;

    private static Estimate Together(Estimate fit, Estimate light)
    {
        if (light.Value <= 0 || light.Low <= 0) return fit;
        return new Estimate(fit.Value, fit.Value / Math.Exp(Root(fit.Value / fit.Low, light.Value / light.Low)), fit.Value * Math.Exp(Root(fit.High / fit.Value, light.High / light.Value)));

        static double Root(double a, double b) => Math.Sqrt(Math.Pow(Math.Log(a), 2) + Math.Pow(Math.Log(b), 2));
    }
}
