using Alumroot.App.Bench;

namespace Alumroot.App.Words;

/// <summary>What was done, in words of the past.</summary>
public static class ActWords
{
    private static readonly Dictionary<Act, string> Said = new()
    {
        [Acts.DyestuffIn] = "plant into the water",
        [Acts.DrawOut] = "colour drawn out",
        [Acts.Strained] = "liquor strained",
        [Acts.AnotherBath] = "another bath begun",
        [Acts.RowRead] = "dilution row read",
        [Acts.LiquorRead] = "liquor read",
        [Acts.SaltIn] = "salt in",
        [Acts.SecondSaltIn] = "second salt in",
        [Acts.SaltRead] = "read with the salt in",
        [Acts.SaltDone] = "no more salt",
        [Acts.AlkaliDissolved] = "alkali dissolved",
        [Acts.AlkaliIn] = "alkali in",
        [Acts.AlkaliRead] = "read after alkali",
        [Acts.AlkaliDone] = "no more alkali",
        [Acts.Settle] = "left to sink",
        [Acts.DrawnOff] = "clear drawn off",
        [Acts.WashIn] = "wash water in",
        [Acts.WashSettle] = "left to sink in the wash",
        [Acts.WashRead] = "washings read",
        [Acts.WashDone] = "washed enough",
        [Acts.FilterOn] = "on the cloth",
        [Acts.FilterOff] = "off the cloth",
        [Acts.DryWeighed] = "drying cake weighed",
        [Acts.DryOn] = "left to dry",
        [Acts.DryDone] = "dry",
        [Acts.Ground] = "ground",
        [Acts.Sieved] = "sieved",
        [Acts.NotSieved] = "not sieved",
    };

    /// <summary>"clear drawn off".</summary>
    public static string Of(Act act)
    {
        ArgumentNullException.ThrowIfNull(act);
        return Said[act];
    }
}
