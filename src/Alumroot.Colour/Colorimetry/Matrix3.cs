namespace Alumroot.Colour.Colorimetry;

/// <summary>Three rows of three numbers, applied to tristimulus values.</summary>
internal readonly record struct Matrix3(Xyz First, Xyz Second, Xyz Third)
{
    internal Xyz Times(Xyz v) => new(Dot(First, v), Dot(Second, v), Dot(Third, v));

    internal Matrix3 Inverse()
    {
        Xyz a = Cross(Second, Third), b = Cross(Third, First), c = Cross(First, Second);
        double d = Dot(First, a);
        return new(new Xyz(a.X / d, b.X / d, c.X / d), new Xyz(a.Y / d, b.Y / d, c.Y / d), new Xyz(a.Z / d, b.Z / d, c.Z / d));
    }

    private static double Dot(Xyz a, Xyz b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    private static Xyz Cross(Xyz a, Xyz b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);
}
