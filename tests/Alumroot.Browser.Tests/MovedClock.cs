namespace Alumroot.Browser.Tests;

/// <summary>The real clock with what a test lets pass on top.</summary>
internal sealed class MovedClock : TimeProvider
{
    private TimeSpan _passed;

    /// <summary>Lets time pass.</summary>
    public void Pass(TimeSpan time) => _passed += time;

    public override DateTimeOffset GetUtcNow() => base.GetUtcNow() + _passed;
}
