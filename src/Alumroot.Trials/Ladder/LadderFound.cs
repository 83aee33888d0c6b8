using Alumroot.Quantities;

namespace Alumroot.Trials.Ladder;

/// <summary>A step between two forms.</summary>
/// <param name="Pka">Its pKa with 90 % span, the reading of the pH included.</param>
/// <param name="IsInside">Whether jars stand on both sides of it; outside it is only a direction.</param>
public sealed record LadderStep(Estimate Pka, bool IsInside);

/// <summary>How well a number of forms does.</summary>
/// <param name="Forms">How many forms.</param>
/// <param name="LeftOutRms">Root mean square miss of jars that were left out of the fit, in the signal's unit.</param>
/// <param name="FitRms">Root mean square miss of the fit.</param>
public sealed record LadderTrial(int Forms, double LeftOutRms, double FitRms);

/// <summary>A fitted ladder.</summary>
public sealed class LadderFound
{
    internal LadderFound(IReadOnlyList<LadderStep> steps, double[][] forms, IReadOnlyList<LadderTrial> tried, double rms, (double Least, double Most) ph, (double[] Pka, double[][] Forms)[] draws)
    {
        (Steps, Forms, Tried, Rms, Range, _draws) = (steps, forms, tried, rms, ph, draws);
    }

    private readonly (double[] Pka, double[][] Forms)[] _draws;

    /// <summary>The steps, ascending.</summary>
    public IReadOnlyList<LadderStep> Steps { get; }

    /// <summary>The signals of each form, the most acid first.</summary>
    public IReadOnlyList<double[]> Forms { get; }

    /// <summary>The numbers of forms that were tried.</summary>
    public IReadOnlyList<LadderTrial> Tried { get; }

    /// <summary>Root mean square miss of the fit, in the signal's unit.</summary>
    public double Rms { get; }

    /// <summary>The lowest and highest pH of the jars.</summary>
    public (double Least, double Most) Range { get; }

    /// <summary>The signals at a pH, by the middle values.</summary>
    public double[] At(double ph) => At(ph, [.. Steps.Select(s => s.Pka.Value)], [.. Forms]);

    /// <summary>The signals at a pH in each of a set of equally likely worlds.</summary>
    public IEnumerable<double[]> DrawsAt(double ph) => _draws.Select(d => At(ph, d.Pka, d.Forms));

    /// <summary>Shares of the forms at a pH, by the middle values.</summary>
    public double[] SharesAt(double ph)
    {
        double[] shares = new double[Steps.Count + 1];
        AcidForms.Shares(ph, [.. Steps.Select(s => s.Pka.Value)], shares);
        return shares;
    }

    private static double[] At(double ph, double[] pka, double[][] forms)
    {
        double[] shares = new double[pka.Length + 1], signals = new double[forms[0].Length];
        AcidForms.Shares(ph, pka, shares);
        for (int f = 0; f < forms.Length; f++)
            for (int s = 0; s < signals.Length; s++) signals[s] += shares[f] * forms[f][s];
        return signals;
    }
}
