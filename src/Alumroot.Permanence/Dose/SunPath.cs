namespace Alumroot.Permanence.Dose;

/// <summary>How the year's light is spread over its days, from the path of the sun above the air.</summary>
/// <remarks>Declination, distance and daily sum on the level by FAO Irrigation and Drainage Paper 56, equations 21 to 25 (from memory); on an upright face the same cosine law summed over the hours.</remarks>
internal static class SunPath
{
    private const int DaysAYear = 365, StepsADay = 96;
    private const double SolarConstantMegajoulesPerMinute = 0.0820;

    /// <summary>Sum of a day on the level above the air, MJ/m².</summary>
    internal static double LevelMegajoules(double latitudeDegrees, int dayOfYear)
    {
        (double latitude, double declination, double distance) = Angles(latitudeDegrees, dayOfYear);
        double sunset = Math.Acos(Math.Clamp(-Math.Tan(latitude) * Math.Tan(declination), -1, 1));
        return 24 * 60 / Math.PI * SolarConstantMegajoulesPerMinute * distance
            * (sunset * Math.Sin(latitude) * Math.Sin(declination) + Math.Cos(latitude) * Math.Cos(declination) * Math.Sin(sunset));
    }

    /// <summary>Sum of a day on an upright face toward the equator above the air, MJ/m².</summary>
    internal static double EquatorFaceMegajoules(double latitudeDegrees, int dayOfYear)
    {
        (double latitude, double declination, double distance) = Angles(latitudeDegrees, dayOfYear);
        double sum = 0;
        for (int i = 0; i < StepsADay; i++)
        {
            double hour = Math.PI * (2 * (i + 0.5) / StepsADay - 1);
            double height = Math.Sin(latitude) * Math.Sin(declination) + Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hour);
            double onFace = (latitude >= 0 ? 1 : -1) * (Math.Sin(latitude) * Math.Cos(declination) * Math.Cos(hour) - Math.Cos(latitude) * Math.Sin(declination));
            if (height > 0 && onFace > 0) sum += onFace;
        }
        return sum / StepsADay * 24 * 60 * SolarConstantMegajoulesPerMinute * distance;
    }

    /// <summary>Share of a year's light that falls in some days on the level, or on a face of which half comes straight from the sun and half from the sky.</summary>
    internal static double Share(double latitudeDegrees, bool towardEquator, int fromDayOfYear, int days)
    {
        double level = 0, levelYear = 0, face = 0, faceYear = 0;
        for (int i = 0; i < DaysAYear; i++)
        {
            double l = LevelMegajoules(latitudeDegrees, i + 1), f = towardEquator ? EquatorFaceMegajoules(latitudeDegrees, i + 1) : l;
            int turns = days / DaysAYear + (((i + 1 - fromDayOfYear) % DaysAYear + DaysAYear) % DaysAYear < days % DaysAYear ? 1 : 0);
            level += turns * l;
            face += turns * f;
            levelYear += l;
            faceYear += f;
        }
        return 0.5 * level / levelYear + 0.5 * face / faceYear;
    }

    private static (double Latitude, double Declination, double Distance) Angles(double latitudeDegrees, int dayOfYear)
    {
        double turn = 2 * Math.PI * dayOfYear / DaysAYear;
        return (latitudeDegrees * Math.PI / 180, 0.409 * Math.Sin(turn - 1.39), 1 + 0.033 * Math.Cos(turn));
    }
}
