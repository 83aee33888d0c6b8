namespace Alumroot.App.Tests;

/// <summary>A clock that goes on by a millisecond when it is read, and otherwise only when told to.</summary>
internal sealed class HeldClock : TimeProvider
{
    private DateTimeOffset _now = new(DateTime.UtcNow.Year, 3, 2, 9, 0, 0, TimeSpan.Zero);

    /// <summary>Lets time pass.</summary>
    public void Pass(TimeSpan time) => _now += time;

    public override DateTimeOffset GetUtcNow() => _now += TimeSpan.FromMilliseconds(1);
}
