using Alumroot.Permanence.Dose;

namespace Alumroot.Permanence.Tests.Dose;

/// <summary>Files as loggers and spreadsheets of several countries write them. The same four readings stand in each: 0, 350.5, 1200 and 80 lx, half an hour apart.</summary>
public sealed class LoggerFileTests
{
    [Theory]
    [InlineData("time,lux\n2026-03-05 10:00,0\n2026-03-05 10:30,350.5\n2026-03-05 11:00,1200\n2026-03-05 11:30,80\n")]
    [InlineData("2026-03-05T10:00:00Z,0\r\n2026-03-05T10:30:00Z,350.5\r\n2026-03-05T11:00:00Z,1200\r\n2026-03-05T11:30:00Z,80")]
    [InlineData("Zeit;Beleuchtungsstärke\n05.03.2026 10:00;0\n05.03.2026 10:30;350,5\n05.03.2026 11:00;1.200,0\n05.03.2026 11:30;80,0\n")]
    [InlineData("Serial;A-1004\nPlace;window\n\nDate;Time;Temp;Light (lux)\n25/03/2026;10:00;21,5;0\n25/03/2026;10:30;21,5;350,5\n25/03/2026;11:00;21,5;1200\n25/03/2026;11:30;21,5;80\n")]
    [InlineData("hours\tlx\n0\t0\n0.5\t350.5\n1\t1200\n1.5\t80\n")]
    [InlineData("minutes|klx\n0|0\n30|0.3505\n60|1.2\n90|0.08\n")]
    [InlineData("# a comment\n\"Date-Time\",\"Illuminance, lx\"\n\"03/25/26 10:00:00 AM\",\"0\"\n\"03/25/26 10:30:00 AM\",\"350.5\"\n\"03/25/26 11:00:00 AM\",\"1,200.0\"\n\"03/25/26 11:30:00 AM\",\"80\"\n")]
    [InlineData("time,lux\n2026-03-05 10:00,0,0\n2026-03-05 10:30,350,5\n2026-03-05 11:00,1200,0\n2026-03-05 11:30,80,0\n")]
    [InlineData("2026-03-05 10:00 0\n2026-03-05 10:30 350.5\n2026-03-05 11:00 1200\n2026-03-05 11:30 80\n")]
    public void The_same_readings_come_of_every_way_of_writing(string text)
    {
        LoggerReadings read = LoggerFile.Read(text);
        Assert.Empty(read.Faults);
        Assert.True(read.IsUsable);
        Assert.Equal([0, 0.5, 1, 1.5], read.Readings.Select(r => Math.Round(r.Hours, 9)));
        Assert.Equal([0, 350.5, 1200, 80], read.Readings.Select(r => Math.Round(r.Lux, 6)));
    }

    [Theory]
    [InlineData("time,lux\nyesterday,5\n2026-03-05 10:00,0", 2, LoggerFaultKind.TimeUnread)]
    [InlineData("time,lux\n2026-03-05 10:00,0\n2026-03-05 10:30,bright", 3, LoggerFaultKind.LuxUnread)]
    [InlineData("time,lux\n2026-03-05 10:00,0\n\n2026-03-05 10:30,-5", 4, LoggerFaultKind.LuxNegative)]
    [InlineData("time,lux\n2026-03-05 10:00,0\n2026-03-05 09:30,5", 3, LoggerFaultKind.TimeGoesBack)]
    [InlineData("time,lux\n2026-03-05 10:00,0\n2026-03-05 10:00,5", 3, LoggerFaultKind.TimeGoesBack)]
    [InlineData("time,lux\n2026-02-30 10:00,0\n2026-03-05 10:00,5", 2, LoggerFaultKind.TimeUnread)]
    [InlineData("2026-03-05 10:00,21,350\n2026-03-05 10:30,21,360", 1, LoggerFaultKind.WhichColumn)]
    public void A_fault_is_told_by_its_line(string text, int line, LoggerFaultKind kind)
    {
        LoggerFault fault = LoggerFile.Read(text).Faults[0];
        Assert.Equal((line, kind), (fault.Line, fault.Kind));
    }

    [Fact]
    public void A_date_with_two_readings_is_asked_about_and_never_guessed()
    {
        const string Text = "time,lux\n03/04/2026 10:00,5\n03/04/2026 11:00,6\n03/04/2026 12:00,6\n";
        LoggerReadings read = LoggerFile.Read(Text);
        Assert.False(read.IsUsable);
        Assert.Equal(LoggerFaultKind.DayOrMonth, Assert.Single(read.Faults).Kind);
        Assert.Equal(new DateTime(2026, 4, 3, 10, 0, 0, DateTimeKind.Unspecified), LoggerFile.Read(Text, dayFirst: true).StartsAt);
        Assert.Equal(new DateTime(2026, 3, 4, 10, 0, 0, DateTimeKind.Unspecified), LoggerFile.Read(Text, dayFirst: false).StartsAt);
    }

    [Fact]
    public void Days_that_run_on_tell_the_order()
    {
        // Read with the month first this would leap from month to month.
        LoggerReadings read = LoggerFile.Read("time,lux\n03/04/2026 10:00,5\n04/04/2026 10:00,6\n05/04/2026 10:00,6\n");
        Assert.Equal(48, read.Readings[^1].Hours);
    }

    [Theory]
    [InlineData("")]
    [InlineData("nothing of use")]
    [InlineData("time,lux\n")]
    public void An_empty_file_is_too_few(string text)
    {
        LoggerReadings read = LoggerFile.Read(text);
        Assert.False(read.IsUsable);
        Assert.Contains(read.Faults, f => f.Kind == LoggerFaultKind.TooFew);
    }

    [Fact]
    public void Many_bad_lines_make_the_file_unusable_and_a_few_do_not()
    {
        string good = string.Concat(Enumerable.Range(0, 100).Select(i => $"{i},{i}\n"));
        Assert.True(LoggerFile.Read("hours,lux\n" + good + "100,x\n").IsUsable);
        Assert.False(LoggerFile.Read("hours,lux\n" + good + string.Concat(Enumerable.Range(100, 40).Select(i => $"{i},x\n"))).IsUsable);
    }
}
