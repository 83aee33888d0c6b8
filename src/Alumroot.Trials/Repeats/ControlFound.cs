namespace Alumroot.Trials.Repeats;

/// <summary>What the place of a value says.</summary>
public enum ControlSign
{
    /// <summary>It lies where chance puts it.</summary>
    Within,

    /// <summary>Above the upper limit.</summary>
    Above,

    /// <summary>Below the lower limit.</summary>
    Below,

    /// <summary>The last of eight or more in a row above the mean.</summary>
    RunAbove,

    /// <summary>The last of eight or more in a row below the mean.</summary>
    RunBelow,
}

/// <summary>A value in its order.</summary>
/// <param name="Value">The value.</param>
/// <param name="MovingRange">How far it lies from the one before; null for the first.</param>
/// <param name="Sign">What its place says.</param>
public sealed record ControlPoint(double Value, double? MovingRange, ControlSign Sign);

/// <summary>Values in order, with the limits that their own steps give.</summary>
/// <param name="Mean">Their mean.</param>
/// <param name="MeanMovingRange">The mean step from one to the next.</param>
/// <param name="Lower">The lower limit.</param>
/// <param name="Upper">The upper limit.</param>
/// <param name="Points">The values.</param>
public sealed record ControlFound(double Mean, double MeanMovingRange, double Lower, double Upper, IReadOnlyList<ControlPoint> Points)
{
    /// <summary>Whether the limits are still loose, since few values gave them.</summary>
    public bool IsProvisional => Points.Count < IndividualsChart.EnoughPoints;
}
