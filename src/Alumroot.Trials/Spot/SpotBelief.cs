namespace Alumroot.Trials.Spot;

/// <summary>What is believed of one liquor on one metal: the chance of each strength. Bayes' rule over four possibilities; docs/models/spot-test.md.</summary>
public sealed class SpotBelief
{
    /// <summary>What a further drop of the same liquor and metal counts, since what went wrong with the first (soda, dirt, an old liquor) may have gone wrong with it too; our judgement.</summary>
    public const double RepeatShare = 0.5;

    /// <summary>What drops count when soda alone throws down colour: lime of hard water is at work in all of them; our judgement.</summary>
    public const double DoubtfulShare = 0.5;

    private static readonly Lazy<double[][]> Sights = new(() => [.. TrialTables.Read("spot_sights.csv").Select(r => new[] { r.Number("nothing"), r.Number("pale"), r.Number("most_left"), r.Number("some_left"), r.Number("none_left") })]);

    private readonly double[] _chances;

    private SpotBelief(double[] chances) => _chances = chances;

    /// <summary>The chance of each strength, from none to strong; they add to 1.</summary>
    public IReadOnlyList<double> ChanceShares => _chances;

    /// <summary>The likeliest strength.</summary>
    public SpotStrength Likeliest => (SpotStrength)Array.IndexOf(_chances, _chances.Max());

    /// <summary>The chance that a lake can be made of it: moderate or strong.</summary>
    public double LakeChanceShare => _chances[(int)SpotStrength.Moderate] + _chances[(int)SpotStrength.Strong];

    /// <summary>Before any drop.</summary>
    /// <param name="stated">What is said of the dyestuff; null when nothing is known.</param>
    /// <param name="trust">low, medium or high.</param>
    public static SpotBelief Before(SpotStrength? stated, string trust)
    {
        string said = stated?.ToString() ?? "not_known", how = stated is null ? "low" : trust;
        foreach (var row in TrialTables.Read("spot_priors.csv"))
            if (string.Equals(row["stated"], said, StringComparison.OrdinalIgnoreCase) && string.Equals(row["trust"], how, StringComparison.OrdinalIgnoreCase))
                return Of([row.Number("none"), row.Number("weak"), row.Number("moderate"), row.Number("strong")]);
        throw new ArgumentException($"There is no trust '{trust}'.", nameof(trust));
    }

    /// <summary>A belief from chances in any scale.</summary>
    /// <param name="chances">Four, not all nothing.</param>
    public static SpotBelief Of(IReadOnlyList<double> chances)
    {
        ArgumentNullException.ThrowIfNull(chances);
        double sum = chances.Sum();
        if (chances.Count != 4 || !(sum > 0) || chances.Any(c => c < 0)) throw new ArgumentException("A belief is four chances of which one is above nothing.", nameof(chances));
        return new SpotBelief([.. chances.Select(c => c / sum)]);
    }

    /// <summary>After a drop was looked at.</summary>
    /// <param name="sight">What it shows.</param>
    /// <param name="countedShare">1 for a drop that counts in full, less for one that says partly the same as another.</param>
    public SpotBelief After(SpotSight sight, double countedShare = 1) => After([.. Sights.Value.Select(row => Math.Pow(row[(int)sight], countedShare))]);

    /// <summary>After something was seen that is so likely under each strength.</summary>
    /// <param name="likelihoods">Four.</param>
    public SpotBelief After(IReadOnlyList<double> likelihoods) => Of([.. _chances.Zip(likelihoods, (chance, likely) => chance * likely)]);

    /// <summary>After all drops of one metal, in order: the first counts in full, each further one for its share.</summary>
    /// <param name="seen">What each showed, and whether soda alone threw down colour beside it.</param>
    public SpotBelief AfterAll(IEnumerable<(SpotSight Sight, bool Doubtful)> seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        SpotBelief belief = this;
        bool first = true;
        foreach ((SpotSight sight, bool doubtful) in seen)
        {
            belief = belief.After(sight, (first ? 1 : RepeatShare) * (doubtful ? DoubtfulShare : 1));
            // A drop in which nothing fell says nothing, and the next one counts as the first.
            first &= sight == SpotSight.Nothing;
        }
        return belief;
    }
}
