namespace Alumroot.Browser.Tests;

/// <summary>What one visit to a page found, each finding in words. An empty list is a pass.</summary>
/// <param name="ByLook">What breaks the house rules, by how the page was looked at.</param>
/// <param name="Sideways">What scrolls sideways at 320 px or with large text.</param>
/// <param name="Keyboard">What the tab key found.</param>
/// <param name="Text">The words of the page.</param>
/// <param name="TextWithoutScript">The words of the page where script is switched off.</param>
internal sealed record PageReport(
    IReadOnlyDictionary<(int Width, bool Dark), IReadOnlyList<string>> ByLook,
    IReadOnlyList<string> Sideways,
    IReadOnlyList<string> Keyboard,
    string Text,
    string TextWithoutScript);
