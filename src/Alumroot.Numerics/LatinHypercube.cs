namespace Alumroot.Numerics;

/// <summary>Points that cover each axis evenly: every axis is cut in as many slices as there are points and each slice is used once.</summary>
/// <remarks>McKay, Beckman, Conover 1979, Technometrics 21:239 (from memory). Of a number of seeded tries the one with the least correlation between axes is kept.</remarks>
public static class LatinHypercube
{
    /// <summary>Makes the points.</summary>
    /// <param name="points">Number of points.</param>
    /// <param name="axes">Number of axes.</param>
    /// <param name="seed">Seed; the same seed gives the same points.</param>
    /// <returns>points x axes values between 0 and 1, row by row.</returns>
    public static double[,] Make(int points, int axes, ulong seed)
    {
        var random = new SeededRandom(seed);
        double[,] best = Try(points, axes, random);
        if (points < 3) return best;
        double least = WorstCorrelation(best);
        for (int attempt = 1; attempt < 40; attempt++)
        {
            double[,] x = Try(points, axes, random);
            double c = WorstCorrelation(x);
            if (c < least) (least, best) = (c, x);
        }
        return best;
    }

    private static double[,] Try(int points, int axes, SeededRandom random)
    {
        var x = new double[points, axes];
        int[] order = Enumerable.Range(0, points).ToArray();
        for (int a = 0; a < axes; a++)
        {
            for (int i = points - 1; i > 0; i--)
            {
                int j = random.NextBelow(i + 1);
                (order[i], order[j]) = (order[j], order[i]);
            }
            for (int i = 0; i < points; i++) x[i, a] = (order[i] + 0.5) / points;
        }
        return x;
    }

    private static double WorstCorrelation(double[,] x)
    {
        int n = x.GetLength(0), d = x.GetLength(1);
        double variance = 0;
        for (int i = 0; i < n; i++) variance += (x[i, 0] - 0.5) * (x[i, 0] - 0.5);
        double worst = 0;
        for (int a = 0; a < d; a++)
            for (int b = a + 1; b < d; b++)
            {
                double sum = 0;
                for (int i = 0; i < n; i++) sum += (x[i, a] - 0.5) * (x[i, b] - 0.5);
                worst = Math.Max(worst, Math.Abs(sum) / variance);
            }
        return worst;
    }
}
