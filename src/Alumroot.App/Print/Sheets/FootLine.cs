using System.Globalization;
using Alumroot.App.Hosting;

namespace Alumroot.App.Print.Sheets;

/// <summary>The line at the foot of every sheet: where from and when.</summary>
/// <param name="options">How the program runs.</param>
public sealed class FootLine(AppOptions options)
{
    /// <summary>The line.</summary>
    public string Foot => string.Create(CultureInfo.InvariantCulture, $"{(options.Demo ? "Demo studio, Tarnwick Workroom: all readings invented. " : "")}Printed {options.Clock.GetLocalNow():d MMM yyyy HH:mm}. Alumroot {Verbs.CommandLine.Version}.");
}
