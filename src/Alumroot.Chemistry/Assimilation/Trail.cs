using Alumroot.Chemistry.Equilibrium;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>The solved states of one path through the log with their responses to every unknown: where paths of like truths start each of their solutions.</summary>
internal sealed class Trail(double[] z)
{
    // A response is a straight line; where it would lead further than this in a logarithm the state alone is the better start.
    private const double Furthest = 4;
    private readonly List<(EquilibriumState State, double[] Responses)> _points = [];

    internal void Add(EquilibriumState state, double[] responses) => _points.Add((state, responses));

    /// <summary>Puts a start for a solution into a state.</summary>
    /// <param name="place">Number of the solution along the path.</param>
    /// <param name="at">The truth to be solved.</param>
    /// <param name="state">Receives the start.</param>
    /// <returns>False when the trail does not go so far.</returns>
    internal bool Lead(int place, ReadOnlySpan<double> at, EquilibriumState state)
    {
        if (place >= _points.Count) return false;
        (EquilibriumState from, double[] responses) = _points[place];
        state.CopyFrom(from);
        if (responses.Length == 0) return true;
        int length = responses.Length / Axis.Chemical;
        Span<double> sum = stackalloc double[length];
        sum.Clear();
        for (int a = 0; a < Axis.Chemical; a++)
        {
            double by = at[a] - z[a];
            ReadOnlySpan<double> row = responses.AsSpan(a * length, length);
            for (int j = 0; j < length; j++) sum[j] += by * row[j];
        }
        int logarithms = length - state.PhaseMol.Length;
        foreach (double s in sum[..logarithms])
            if (!(Math.Abs(s) < Furthest)) return true;
        state.Move(sum, 1);
        return true;
    }
}
