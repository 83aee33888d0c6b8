namespace Alumroot.Permanence.Fading;

/// <summary>How far a colour has moved in lightness, red against green and yellow against blue.</summary>
/// <param name="Lightness">Change of L*.</param>
/// <param name="RedGreen">Change of a*.</param>
/// <param name="YellowBlue">Change of b*.</param>
public readonly record struct ColourStep(double Lightness, double RedGreen, double YellowBlue)
{
    internal double Square => Lightness * Lightness + RedGreen * RedGreen + YellowBlue * YellowBlue;

    internal double Along(ColourStep way) => Lightness * way.Lightness + RedGreen * way.RedGreen + YellowBlue * way.YellowBlue;
}

/// <summary>Differences of one sample from all three parts of its colour at once, without what noise adds to a length.</summary>
/// <remarks>
/// The sample's own way is the direction in which its changes point together, each weighed by its length. A change counts along that way with its sign; what it has across it counts as far as
/// it exceeds the noise of two parts, so that a colour that turns while it fades is not shortened. Near nothing the result scatters about nothing. Derived by hand; tests simulate it.
/// </remarks>
public static class ColourSteps
{
    private const int Across = 2;

    /// <summary>The differences, with a sign, in the order of the changes.</summary>
    /// <param name="changes">The changes of all strips at all readings, from the colour before exposure.</param>
    /// <param name="deviation">Standard deviation of one part of one change.</param>
    public static IReadOnlyList<double> Differences(IReadOnlyList<ColourStep> changes, double deviation)
    {
        ArgumentNullException.ThrowIfNull(changes);
        ArgumentOutOfRangeException.ThrowIfNegative(deviation);
        double l = 0, a = 0, b = 0;
        foreach (ColourStep c in changes)
        {
            double weight = Math.Sqrt(c.Square);
            (l, a, b) = (l + weight * c.Lightness, a + weight * c.RedGreen, b + weight * c.YellowBlue);
        }
        double length = Math.Sqrt(l * l + a * a + b * b);
        if (length <= 0) return [.. changes.Select(c => Math.Sqrt(c.Square))];
        var way = new ColourStep(l / length, a / length, b / length);
        return [.. changes.Select(c =>
        {
            double along = c.Along(way), beside = Math.Max(0, c.Square - along * along - Across * deviation * deviation);
            return Math.Sign(along) * Math.Sqrt(along * along + beside);
        })];
    }
}
