using System.Globalization;
using Alumroot.App.Bench;
using CsCheck;

namespace Alumroot.App.Tests;

/// <summary>Times to wait, typed and spoken. The factors are those of the SI brochure: 60 minutes an hour, 24 hours a day.</summary>
public sealed class WaitTextTests
{
    [Theory]
    [InlineData("20", 20)]
    [InlineData("20 min", 20)]
    [InlineData("1,5 h", 90)]
    [InlineData("1.5hours", 90)]
    [InlineData(" 2 days ", 2880)]
    [InlineData("1 D", 1440)]
    public void Minutes_hours_and_days_are_read(string typed, double minutes) => Assert.Equal(TimeSpan.FromMinutes(minutes), WaitText.Read(typed));

    [Theory]
    [InlineData("")]
    [InlineData("-5 min")]
    [InlineData("soon")]
    [InlineData("1e3 h")]
    [InlineData("20 weeks")]
    [InlineData("9999999 d")]
    [InlineData("1.2.3 h")]
    public void What_is_no_time_is_not_read(string typed) => Assert.Null(WaitText.Read(typed));

    [Theory]
    [InlineData(0.2, "1 minute")]
    [InlineData(41.5, "42 minutes")]
    [InlineData(60, "1 h")]
    [InlineData(200, "3 h 20 min")]
    [InlineData(1440, "1 day")]
    [InlineData(3120, "2 days 4 h")]
    public void A_time_is_spoken_in_two_units_at_most(double minutes, string words) => Assert.Equal(words, WaitText.Of(TimeSpan.FromMinutes(minutes)));

    [Fact]
    public void Minutes_come_back_as_they_were_typed() => Gen.Int[0, 100_000].Sample(minutes =>
        Assert.Equal(TimeSpan.FromMinutes(minutes), WaitText.Read(minutes.ToString(CultureInfo.InvariantCulture) + " min")));
}
