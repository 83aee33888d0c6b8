namespace Alumroot.Trials.Ladder;

/// <summary>Shares of the forms of a dye that gives off protons one after the other.</summary>
/// <remarks>Mass action (Henderson 1908, Hasselbalch 1917); the pKa are those of the solution as it is, not of endless dilution.</remarks>
public static class AcidForms
{
    /// <summary>Shares of the forms from the most acid to the most alkaline; they sum to 1.</summary>
    /// <param name="ph">The pH.</param>
    /// <param name="pka">The steps, ascending.</param>
    /// <param name="shares">Receives one share more than there are steps.</param>
    public static void Shares(double ph, ReadOnlySpan<double> pka, Span<double> shares)
    {
        // In powers of ten above the first form, less the largest, so that nothing overflows.
        double power = 0, most = 0;
        shares[0] = 0;
        for (int i = 0; i < pka.Length; i++)
        {
            power += ph - pka[i];
            shares[i + 1] = power;
            most = Math.Max(most, power);
        }
        double sum = 0;
        for (int i = 0; i <= pka.Length; i++) sum += shares[i] = Math.Pow(10, shares[i] - most);
        for (int i = 0; i <= pka.Length; i++) shares[i] /= sum;
    }
}
