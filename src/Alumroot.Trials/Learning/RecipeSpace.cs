using Alumroot.Trials.Analysis;

namespace Alumroot.Trials.Learning;

/// <summary>A place among the recipes: measured factors from 0 to 1 of their range, named ones by the number of their name.</summary>
/// <param name="Measured">One for each measured factor.</param>
/// <param name="Named">One for each named factor.</param>
internal sealed record Recipe(double[] Measured, int[] Named);

/// <summary>All recipes that the factors of a table span, and its rows among them.</summary>
internal sealed class RecipeSpace
{
    private readonly FactorColumn[] _measured, _named;

    public RecipeSpace(TrialData data)
    {
        _measured = [.. data.Factors.Where(f => f.IsMeasured && f.Range.Most > f.Range.Least)];
        _named = [.. data.Factors.Where(f => !f.IsMeasured && f.Levels.Count > 1)];
        Rows = [.. Enumerable.Range(0, data.Count).Select(i => new Recipe(
            [.. _measured.Select(f => (f.Numbers![i] - f.Range.Least) / (f.Range.Most - f.Range.Least))],
            [.. _named.Select(f => IndexOf(f.Levels, f.Names[i]))]))];
        Fixed = [.. data.Factors.Except(_measured).Except(_named)];
    }

    public IReadOnlyList<FactorColumn> MeasuredFactors => _measured;

    public IReadOnlyList<FactorColumn> NamedFactors => _named;

    /// <summary>Factors that were never changed.</summary>
    public IReadOnlyList<FactorColumn> Fixed { get; }

    public IReadOnlyList<Recipe> Rows { get; }

    /// <summary>A setting in the factor's own unit, rounded to what a maker sets: a fiftieth of the range in 1, 2, 5.</summary>
    public double Setting(int measured, double share)
    {
        (double least, double most) = _measured[measured].Range;
        double step = Step((most - least) / 50), value = Math.Round((least + share * (most - least)) / step) * step;
        return Math.Clamp(Math.Round(value, 10), least, most);
    }

    /// <summary>The recipe as it would be set.</summary>
    public Recipe Rounded(Recipe recipe) => recipe with
    {
        Measured = [.. recipe.Measured.Select((share, i) => (Setting(i, share) - _measured[i].Range.Least) / (_measured[i].Range.Most - _measured[i].Range.Least))],
    };

    private static double Step(double about)
    {
        double ten = Math.Pow(10, Math.Floor(Math.Log10(about))), part = about / ten;
        return ten * (part < 1.5 ? 1 : part < 3.5 ? 2 : part < 7.5 ? 5 : 10);
    }

    private static int IndexOf(IReadOnlyList<string> levels, string name)
    {
        for (int i = 0; i < levels.Count; i++) if (levels[i] == name) return i;
        return -1;
    }
}
