using Alumroot.App.Studio;

namespace Alumroot.App.Tests;

/// <summary>When to look again, typed. Days of the calendar were counted by hand.</summary>
public sealed class LookAgainTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 27, 10, 30, 0, TimeSpan.FromHours(1));

    [Theory]
    [InlineData("2026-12-24", "2026-12-24T09:00:00+01:00")]
    [InlineData("24 Dec 2026", "2026-12-24T09:00:00+01:00")]
    [InlineData("24.12.2026", "2026-12-24T09:00:00+01:00")]
    [InlineData(" 3 days ", "2026-11-30T10:30:00+01:00")]
    [InlineData("1,5 h", "2026-11-27T12:00:00+01:00")]
    [InlineData("4 weeks", "2026-12-25T10:30:00+01:00")]
    [InlineData("2026-11-27", "2026-11-27T09:00:00+01:00")]
    public void A_day_or_a_time_from_now_is_read(string typed, string at) =>
        Assert.Equal((DateTimeOffset.Parse(at, System.Globalization.CultureInfo.InvariantCulture), null), (LookAgain.Read(typed, Now).At!.Value, LookAgain.Read(typed, Now).Trouble));

    [Theory]
    [InlineData("28", "28 of what?")]
    [InlineData("1,5", "1,5 of what?")]
    [InlineData("soon", "neither a day nor a time from now")]
    [InlineData("-3 days", "neither a day nor a time from now")]
    [InlineData("2026-11-26", "is past")]
    [InlineData("2026-13-01", "neither a day nor a time from now")]
    [InlineData("2099-01-01", "more than ten years away")]
    [InlineData("9999 weeks", "neither a day nor a time from now")]
    public void What_is_none_is_said(string typed, string said)
    {
        Assert.Contains(said, LookAgain.Read(typed, Now).Trouble, StringComparison.Ordinal);
        Assert.Null(LookAgain.Read(typed, Now).At);
    }

    [Fact]
    public void Nothing_typed_is_no_reminder() => Assert.Equal((null, null), LookAgain.Read("  ", Now));
}
