namespace Alumroot.Permanence.Fading;

/// <summary>One reading of an exposed strip.</summary>
/// <param name="DoseMegaluxHours">Light it has had so far, in megalux hours.</param>
/// <param name="DeltaE">Difference from its colour before exposure. A length, so noise lifts it near nothing; some readings carry a sign.</param>
public readonly record struct FadingPoint(double DoseMegaluxHours, double DeltaE);

/// <summary>One strip: readings that share a first reading and a place in the light.</summary>
/// <param name="Replicate">What the asker calls it.</param>
/// <param name="Points">Its readings, by rising dose.</param>
public sealed record FadingStrip(string Replicate, IReadOnlyList<FadingPoint> Points);

/// <summary>Strips of the same thing.</summary>
/// <param name="Name">What it is; <c>BW1</c> to <c>BW8</c> are the blue wool references.</param>
/// <param name="Strips">One or more.</param>
public sealed record FadingSeries(string Name, IReadOnlyList<FadingStrip> Strips)
{
    /// <summary>Number of the blue wool reference (ISO 105-B08), or null for a sample.</summary>
    public int? Reference => Name is ['B' or 'b', 'W' or 'w', >= '1' and <= '8' and var digit] ? digit - '0' : null;

    /// <summary>The most light that any strip has had.</summary>
    public double MostDoseMegaluxHours => Strips.SelectMany(s => s.Points).Select(p => p.DoseMegaluxHours).DefaultIfEmpty(0).Max();

    /// <summary>Readings after some light.</summary>
    internal int ExposedCount => Strips.Sum(s => s.Points.Count(p => p.DoseMegaluxHours > 0));
}
