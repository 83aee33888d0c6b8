using System.Globalization;
using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Equilibrium;
using Alumroot.Chemistry.Titration;

namespace Alumroot.Chemistry.Tests;

/// <summary>A kilogram of water with what is said to be in it, by the embedded constants.</summary>
internal static class Beaker
{
    /// <summary>The state of a solution; a solve that fails fails the test.</summary>
    /// <param name="contents">Reagents with moles per kilogram of water, such as "sodium-carbonate=0.1".</param>
    /// <param name="celsius">Temperature in degrees Celsius.</param>
    /// <param name="gas">What may become of carbon dioxide.</param>
    /// <param name="solids">Solids that may form.</param>
    public static EquilibriumState Holding(string contents, double celsius = 25, GasRule gas = GasRule.Closed, params string[] solids)
    {
        var run = new TitrationRun(EmbeddedConstants.Set, new TitrationCase(contents, celsius, 1, Reagents(contents), null, TitrationCase.Allow(solids, gas)));
        WhyNot why = run.Step(0);
        Assert.True(why == WhyNot.None, $"{contents}: {why}");
        return run.State;
    }

    /// <summary>Moles of an anhydrous salt in a kilogram of water for a solution of this percentage by mass.</summary>
    public static double MolalOfPercent(double percent, double gramsPerMole) => percent * 10 / gramsPerMole / (1 - percent / 100);

    private static (Reagent, double)[] Reagents(string contents) => [.. contents.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(part =>
    {
        string[] sides = part.Split('=');
        return (EmbeddedConstants.Set.FindReagent(sides[0]) ?? throw new ArgumentException(sides[0], nameof(contents)), double.Parse(sides[1], CultureInfo.InvariantCulture));
    })];
}
