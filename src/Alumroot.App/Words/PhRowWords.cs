using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Chemistry.PhRow;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.App.Words;

/// <summary>The words of a row of jars at several pH.</summary>
internal static class PhRowWords
{
    /// <summary>Columns of the row, on the page and on paper.</summary>
    internal static readonly IReadOnlyList<string> Heads = ["pH", "of", "mL", "span", "then read", "water to fill up"], CardHeads = ["pH", "of", "mL", "span", "fill up", "pH read", "L* a* b*"];

    /// <summary>Name of the table.</summary>
    internal const string Table = "The row, reckoned; spans hold nine times in ten";

    /// <summary>Where the equations fail.</summary>
    internal const string NoEnd = "The equations of this liquor came to no end, so nothing is claimed. Change one thing at a time, the water first.";

    /// <summary>How to go about it.</summary>
    internal static IReadOnlyList<string> Steps(PhRowRequest asked, PhRowPlan plan) =>
    [
        $"{Solution(asked.Input!.Acid)}. {Solution(asked.Input.Alkali)}.",
        string.Create(CultureInfo.InvariantCulture, $"Mark {plan.Jars.Count} equal glasses at {Number(plan.FilledMillilitres)} mL and give each {Number(asked.Input.Liquor.Millilitres)} mL of the liquor."),
        "Give the lower end of the span, stir, wait a minute, read; go on drop by drop to the pH of the jar. A drop is 0.05 mL. The strip decides, not the table.",
        "Fill up to the mark with the same water, stir, read once more, and write down what you read, not what was aimed at.",
        "Photograph the row from above on white, beside a target, within ten minutes, and again after a day: what turns with time is no step of a pH.",
    ];

    /// <summary>What has to be minded.</summary>
    internal const string Mind = "Acid and soda sting eyes, above pH 10 and below 3 they burn: glasses on, gloves, water at hand; acid into water, never the other way. Soda in a sour liquor foams. Check local codes for what may go down a drain, and ask somebody licensed where you are not sure.";

    /// <summary>One sentence of what it is.</summary>
    internal static string Sentence(PhRowRequest asked, PhRowPlan plan) => string.Create(CultureInfo.InvariantCulture, $"{plan.Jars.Count} jars of {asked.Dyestuff?.Name.ToLowerInvariant() ?? "plain water"}, {Number(asked.Input!.Liquor.Millilitres)} mL each; the liquor itself is near pH {plan.LiquorPh.Value:0.0} ({plan.LiquorPh.Low:0.0} to {plan.LiquorPh.High:0.0}).");

    /// <summary>The cells of a jar on the page.</summary>
    internal static IReadOnlyList<string> Cells(PhRowJar jar, PhRowRequest asked) => [Ph(jar.AimPh.Value), What(jar, asked), Dose(jar), Span(jar), $"{Ph(jar.PhWithIt.Value)} ({Ph(jar.PhWithIt.Low)} to {Ph(jar.PhWithIt.High)})", jar.Dose == RowDose.OutOfReach ? "" : $"{Number(jar.TopUpMillilitres)} mL"];

    /// <summary>The cells of a jar on a card, with blanks.</summary>
    internal static IReadOnlyList<string> CardCells(PhRowJar jar, PhRowRequest asked, PhRowPlan plan) => [Ph(jar.AimPh.Value), What(jar, asked), Dose(jar), Span(jar), $"{Number(plan.FilledMillilitres)} mL", "", ""];

    /// <summary>What goes in.</summary>
    internal static string What(PhRowJar jar, PhRowRequest asked) => jar.Dose switch
    {
        RowDose.Acid => asked.AcidOf!.PlainName,
        RowDose.Alkali => asked.AlkaliOf!.PlainName,
        RowDose.Nothing => "nothing",
        _ => "out of reach",
    };

    private static string Dose(PhRowJar jar) => jar.Dose switch
    {
        RowDose.OutOfReach => "–",
        RowDose.Nothing => "0",
        _ => Millilitres(jar.DoseMillilitres.Value),
    };

    private static string Span(PhRowJar jar) => jar.Dose is RowDose.OutOfReach or RowDose.Nothing ? "–" : $"{Millilitres(jar.DoseMillilitres.Low)} to {Millilitres(jar.DoseMillilitres.High)}";

    private static string Solution(RowSolution solution) => solution.Substance.Unit == SubstanceUnit.Gram
        ? string.Create(CultureInfo.InvariantCulture, $"Dissolve {solution.GramsPer100Millilitres:0.#} g of {solution.Substance.PlainName} in water to 100 mL")
        : $"Take {solution.Substance.PlainName} as it is";

    private static string Millilitres(double x) => x.ToString(x < 1 ? "0.00" : "0.0", CultureInfo.InvariantCulture);

    private static string Number(double x) => x.ToString(x < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);

    private static string Ph(double x) => x.ToString("0.0", CultureInfo.InvariantCulture);
}
