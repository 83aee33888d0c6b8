using Alumroot.Quantities;

namespace Alumroot.Trials.Learning;

/// <summary>Why a recipe is worth a jar.</summary>
public enum WorthBecause
{
    /// <summary>It is expected to come nearer than any recipe tried.</summary>
    ExpectedNearer,

    /// <summary>Little is known there, and it may come nearer.</summary>
    LittleKnown,

    /// <summary>These names were never put together.</summary>
    NeverTogether,

    /// <summary>Nothing better is in sight: it is the best one again, to see how well it repeats.</summary>
    RepeatBest,
}

/// <summary>A setting of a recipe.</summary>
/// <param name="Factor">Which factor.</param>
/// <param name="Number">In its own unit; null for a name.</param>
/// <param name="Name">As it is written.</param>
public sealed record RecipeSetting(string Factor, double? Number, string Name);

/// <summary>A recipe with what it is expected to give.</summary>
/// <param name="Settings">What to set.</param>
/// <param name="Expected">Each response with the span of one reading of it.</param>
/// <param name="Loss">How far from the aim, with the span of the recipe itself; small is good.</param>
/// <param name="Gain">How much nearer than the best so far it may be expected to come, on average over what is not known.</param>
public sealed record RecipeProposal(IReadOnlyList<RecipeSetting> Settings, IReadOnlyList<(string Response, Estimate Value)> Expected, Estimate Loss, double Gain)
{
    /// <summary>The same for further aims.</summary>
    public IReadOnlyList<Estimate> OtherLosses { get; init; } = [];
}

/// <summary>How well each reading is foretold by the others.</summary>
/// <param name="Response">Which response.</param>
/// <param name="Rms">Root mean square miss.</param>
/// <param name="ScatterSd">The scatter of the response itself, one standard deviation: a surrogate that knows nothing misses by this.</param>
/// <param name="InsideRatio">How many lie in their 90 % span, 0 to 1.</param>
public sealed record Foretold(string Response, double Rms, double ScatterSd, double InsideRatio)
{
    /// <summary>Each row that was learned from, by its place in the table, foretold from all the others with the span of one reading.</summary>
    public IReadOnlyList<(int Row, Estimate Value)> Each { get; init; } = [];
}

/// <summary>The next jar.</summary>
/// <param name="Next">The recipe most worth a jar.</param>
/// <param name="Because">Why.</param>
/// <param name="Where">The factor or factors that the reason names.</param>
/// <param name="Best">The best recipe so far by what is believed of it.</param>
/// <param name="Others">Further recipes worth a jar, each different in some setting.</param>
/// <param name="Trade">With several aims: recipes of which none is better in all of them.</param>
/// <param name="Calibration">Leave-one-out.</param>
/// <param name="RowCount">How many rows were learned from.</param>
/// <param name="UsedCount">How many of them the surrogate holds.</param>
public sealed record NextFound(
    RecipeProposal Next, WorthBecause Because, IReadOnlyList<RecipeSetting> Where, RecipeProposal Best, IReadOnlyList<RecipeProposal> Others, IReadOnlyList<RecipeProposal> Trade, IReadOnlyList<Foretold> Calibration, int RowCount, int UsedCount);
