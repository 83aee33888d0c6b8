using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>How a page is looked at.</summary>
/// <param name="Width">Width in CSS px.</param>
/// <param name="Height">Height in CSS px.</param>
public sealed record View(int Width, int Height)
{
    /// <summary>A phone held upright.</summary>
    public static View Phone { get; } = new(360, 740);

    /// <summary>A laptop.</summary>
    public static View Laptop { get; } = new(1280, 900);

    /// <summary>The dark colour scheme.</summary>
    public bool Dark { get; init; }

    /// <summary>Whether script runs.</summary>
    public bool Script { get; init; } = true;

    internal BrowserNewContextOptions Options => new()
    {
        ViewportSize = new ViewportSize { Width = Width, Height = Height },
        ColorScheme = Dark ? ColorScheme.Dark : ColorScheme.Light,
        JavaScriptEnabled = Script,
        ReducedMotion = ReducedMotion.Reduce,
        Locale = "en-GB",
    };
}
