namespace Alumroot.App.Hosting;

/// <summary>How the web pages are to be opened.</summary>
public sealed record AppOptions
{
    /// <summary>The port on this machine's own address; 0 takes any free one.</summary>
    public int Port { get; init; }

    /// <summary>The studio's folder, or null to keep nothing.</summary>
    public string? StudioFolder { get; init; }

    /// <summary>Whether the invented demo studio is shown.</summary>
    public bool Demo { get; init; }
}
