using Alumroot.App.Sharing;

namespace Alumroot.App.Hosting;

/// <summary>How the web pages are to be opened.</summary>
public sealed record AppOptions
{
    /// <summary>The port on this machine's own address; 0 takes any free one.</summary>
    public int Port { get; init; }

    /// <summary>Whether the invented demo studio is shown.</summary>
    public bool Demo { get; init; }

    /// <summary>What others on the local network have to give to be let in; null to listen on this machine only.</summary>
    public Passphrase? Share { get; init; }

    /// <summary>The clock that timers and entries go by.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
