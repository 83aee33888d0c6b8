using System.Globalization;
using Alumroot.Permanence.OtherTests;

namespace Alumroot.App.Words;

/// <summary>The other tests in words.</summary>
public static class OtherTestWords
{
    /// <summary>Its name; its key when it is not known here.</summary>
    public static string Name(string key) => OtherTest.Find(key)?.Name ?? key;

    /// <summary>"0.8 % by mass: washed clean".</summary>
    public static string Result(OtherTest test, double result)
    {
        ArgumentNullException.ThrowIfNull(test);
        return string.Create(CultureInfo.InvariantCulture, $"{Figure(result)} {test.Unit}: {test.Meaning(result)}");
    }

    /// <summary>The result with as many figures as such a test carries.</summary>
    public static string Figure(double result) => Math.Abs(result) switch
    {
        >= 100 => result.ToString("0", CultureInfo.InvariantCulture),
        >= 10 => result.ToString("0.0", CultureInfo.InvariantCulture),
        _ => result.ToString("0.00", CultureInfo.InvariantCulture),
    };
}
