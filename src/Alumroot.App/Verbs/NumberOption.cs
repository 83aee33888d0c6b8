using System.CommandLine;
using System.Globalization;

namespace Alumroot.App.Verbs;

/// <summary>An option that takes a plain number written with a point. A comma is never read as a thousands mark, which would make 15 of 1,5.</summary>
internal static class NumberOption
{
    /// <summary>The option; null when it is left out.</summary>
    /// <param name="name">With its dashes.</param>
    /// <param name="helpName">What stands for the number in the help.</param>
    /// <param name="description">What it is.</param>
    internal static Option<double?> Of(string name, string helpName, string description) => new(name)
    {
        HelpName = helpName,
        Description = description,
        CustomParser = result =>
        {
            string typed = result.Tokens.Count > 0 ? result.Tokens[^1].Value : "";
            if (double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x)) return x;
            result.AddError(typed.Contains(',', StringComparison.Ordinal)
                ? $"'{typed}' after '{name}' has a comma. Numbers are written with a point, such as 1.5."
                : $"'{typed}' after '{name}' is no number. Write it with a point, such as 1.5.");
            return null;
        },
    };
}
