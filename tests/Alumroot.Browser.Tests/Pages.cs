namespace Alumroot.Browser.Tests;

/// <summary>The addresses that every house rule is tried on. A new page is checked by adding a row.</summary>
public static class Pages
{
    /// <summary>Paths with their queries.</summary>
    public static TheoryData<string> All { get; } = new(
        "/",
        "/find",
        "/find?q=alum",
        "/find?q=zzqx",
        "/handbook",
        "/handbook/dyestuffs",
        "/handbook/dyestuffs/madder",
        "/handbook/dyestuffs/maddr",
        "/handbook/how",
        "/handbook/how/equilibrium",
        "/handbook/how/gas",
        "/handbook/how/path",
        "/handbook/how/plan",
        "/handbook/how/quantities",
        "/handbook/how/washing",
        "/handbook/how/yield",
        "/handbook/how/nothing",
        "/handbook/reading",
        "/handbook/reagents",
        "/handbook/reagents/potash-alum",
        "/handbook/reagents/lead-carbonate",
        "/handbook/rules",
        "/handbook/safety",
        "/handbook/sources",
        "/handbook/trouble",
        "/lakes",
        "/lakes/plan",
        Plans.Madder,
        Plans.Kitchen,
        Plans.AlkaliFirst,
        Plans.WhichAlum,
        Plans.Troubled,
        Plans.Refused,
        Plans.OutOfReach,
        Plans.HeldBack,
        Plans.Quarrel,
        "/enter",
        "/studio/sharing",
        "/too-large",
        "/nowhere");
}
