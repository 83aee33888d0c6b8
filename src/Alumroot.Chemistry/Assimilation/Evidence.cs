namespace Alumroot.Chemistry.Assimilation;

/// <summary>Weighs cases by how well each explains all readings.</summary>
internal static class Evidence
{
    /// <summary>Probability of each case from ln of its evidence.</summary>
    internal static double[] Shares(IReadOnlyList<double> logEvidence)
    {
        double top = logEvidence.Max();
        double[] shares = [.. logEvidence.Select(e => Math.Exp(e - top))];
        double sum = shares.Sum();
        for (int i = 0; i < shares.Length; i++) shares[i] /= sum;
        return shares;
    }
}
