namespace Alumroot.Chemistry.Assimilation;

/// <summary>Weighs cases by how well each explains all readings.</summary>
internal static class Evidence
{
    /// <summary>Probability of each fitted case.</summary>
    internal static double[] Shares(IReadOnlyList<MapFit> fits)
    {
        double top = fits.Max(f => f.LogEvidence);
        double[] shares = [.. fits.Select(f => Math.Exp(f.LogEvidence - top))];
        double sum = shares.Sum();
        for (int i = 0; i < shares.Length; i++) shares[i] /= sum;
        return shares;
    }
}
