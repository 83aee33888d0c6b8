namespace Alumroot.Browser.Tests;

/// <summary>The addresses that every house rule is tried on. A new page is checked by adding a row.</summary>
public static class Pages
{
    /// <summary>Paths with their queries.</summary>
    public static TheoryData<string> All { get; } = new(
        "/",
        "/handbook/reading",
        "/nowhere");
}
