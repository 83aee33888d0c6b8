using Alumroot.App.Permanence;
using Alumroot.Browser.Tests;
using Alumroot.Colour.Colorimetry;
using Alumroot.Permanence.Fading;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using CsCheck;

namespace Alumroot.App.Tests;

/// <summary>Strips in the light as a browser without script tells them: begun, read from photographs and by an instrument, light told, verdict, the other tests.</summary>
public sealed class PermanencePageTests
{
    private static readonly (string, string)[] Begun = [("title", "spring window"), ("samples", "rose x 2\nyellow"), ("bw1", "yes"), ("bw2", "yes"), ("bw3", "yes"), ("light", "readings"), ("hours", "10"), ("next", "2 days")];

    [Fact]
    public async Task An_exposure_is_begun_waits_and_is_found()
    {
        var clock = new HeldClock();
        await using OpenStudio studio = await OpenStudio.StartAsync(clock);
        OpenStudio.Seen page = await BeginAsync(studio, Begun);
        Assert.StartsWith("/permanence/E-01", page.Address, StringComparison.Ordinal);
        ExposureBegun begun = studio.Store.Exposure(SubjectKey.Exposure(1))!.Begun!;
        Assert.Equal([("rose", 2), ("yellow", 1), ("BW1", 1), ("BW2", 1), ("BW3", 1)], begun.Samples.Select(s => (s.Name, s.Strips)));
        Assert.Equal((LightWay.Readings, 10.0), (begun.Light.Way, begun.Light.HoursADay));
        Assert.Contains("E-01 spring window, strips in the light", (await studio.GetAsync("/")).Text, StringComparison.Ordinal);
        Assert.Contains("E-01", (await studio.GetAsync("/find?q=spring")).Text, StringComparison.Ordinal);
        Assert.Contains("next look", (await studio.GetAsync("/permanence")).Text, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:Alumroot E-01: ready", System.Text.Encoding.UTF8.GetString(await studio.BytesAsync("/permanence/E-01/ready.ics")), StringComparison.Ordinal);
        clock.Pass(TimeSpan.FromDays(3));
        Assert.Contains("due since", (await studio.GetAsync("/permanence/E-01")).Text, StringComparison.Ordinal);
        Assert.Contains("No dose is known yet", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("samples", "", "Samples: none is named")]
    [InlineData("samples", "rose x 40", "40 strips of rose are not possible")]
    [InlineData("samples", "BW4", "BW4 is a blue wool reference")]
    [InlineData("samples", "26-777", "there is no 26-777 here")]
    [InlineData("samples", "rose\nRose", "stands there twice")]
    [InlineData("title", "", "Name: nothing is typed")]
    [InlineData("light", "moon", "Light: choose one of the four ways")]
    [InlineData("light", "lamp", "Level of the lamp: nothing is typed")]
    [InlineData("light", "window", "Latitude: nothing is typed")]
    [InlineData("hours", "-3", "Hours of light in a day")]
    [InlineData("hours", "30", "Hours of light in a day")]
    [InlineData("next", "soon", "'soon' is no time")]
    public async Task What_is_wrong_with_a_new_exposure_is_said_and_nothing_typed_is_lost(string field, string typed, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio, [.. Begun.Where(f => f.Item1 != field), (field, typed)]);
        Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.Contains(field == "title" ? "rose x 2" : "spring window", page.Html, StringComparison.Ordinal);
        Assert.Equal(0, studio.Store.Count());
    }

    // First order with a known rate and references of known doses: the class lies where interpolation in log dose puts it (the way of ISO 105-B08), by hand.
    [Fact]
    public async Task Readings_by_an_instrument_lead_to_a_class_and_years()
    {
        var clock = new HeldClock();
        await using OpenStudio studio = await OpenStudio.StartAsync(clock);
        await BeginAsync(studio, Begun);
        OpenStudio.Seen page = await studio.GetAsync("/permanence/E-01");
        page = await studio.SendAsync(page.Forms.Single(f => f.Action.EndsWith("/level", StringComparison.Ordinal)), ("level", "20 000 lx"));
        Assert.Contains("Kept", page.Text, StringComparison.Ordinal);
        double day = 0;
        foreach (double until in new[] { 1.0, 2, 4, 8, 16 })
        {
            clock.Pass(TimeSpan.FromDays(until - day));
            day = until;
            page = await studio.GetAsync("/permanence/E-01/read");
            double dose = 0.2 * day;
            page = await studio.SendAsync(page.Forms.Single(f => f.Action == "/permanence/E-01/read"), [.. Typed(dose)]);
            Assert.Contains("strips read: rose, yellow, BW1, BW2, BW3", page.Text, StringComparison.Ordinal);
        }
        // 20 000 lx for ten hours a day are 0.2 Mlx h a day; one level stands within a factor of two.
        Assert.Contains("3.20 Mlx h (1.", page.Text, StringComparison.Ordinal);
        ExposureFound found = ExposureFound.Of(studio.Store.Exposure(SubjectKey.Exposure(1))!, clock.GetLocalNow());
        SampleVerdict rose = found.Samples.Single(s => s.Sample.Name == "rose");
        // BW2 takes 0.6 to 1.7 and BW3 1.5; rose takes 0.95: 2 + ln(0.95 / 0.6) / ln(1.5 / 0.6) = 2.50.
        Assert.InRange(rose.Found.Criteria[0].Class!.Value.Value, 2.4, 2.6);
        Assert.InRange(rose.Found.Criteria[0].DoseMegaluxHours!.Value.Value, 0.85, 1.05);
        Assert.Contains("like reference 2.", page.Text, StringComparison.Ordinal);
        Assert.Contains("on a bright wall", page.Text, StringComparison.Ordinal);
        Assert.Contains("No answer yet", page.Text, StringComparison.Ordinal);

        // The table is what the verb reads, and it says the same class.
        string file = Path.Combine(studio.Folder, "series.csv");
        await File.WriteAllBytesAsync(file, await studio.BytesAsync("/permanence/E-01/series.csv"), TestContext.Current.CancellationToken);
        Assert.Contains(FormattableString.Invariant($"like reference {rose.Found.Criteria[0].Class!.Value.Value:0.0}"), (await Verbs.Command.Of(["fade", file])).Data, StringComparison.Ordinal);

        page = await studio.SendAsync(page.Forms.Single(f => f.Action.EndsWith("/end", StringComparison.Ordinal)));
        Assert.Contains("This exposure has ended", page.Text, StringComparison.Ordinal);
        Assert.Null(studio.Store.Exposure(SubjectKey.Exposure(1))!.ReadyAt);
        Assert.Contains("rose", (await studio.GetAsync("/permanence/compare")).Text, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Check());

        static IEnumerable<(string, string)> Typed(double dose)
        {
            (double Dose17, double Most)[] fades = [(0.95, 14), (0.95, 14), (60, 14), (0.25, 14), (0.6, 14), (1.5, 14)];
            for (int i = 0; i < fades.Length; i++)
            {
                double k = -Math.Log(1 - 1.7 / fades[i].Most) / fades[i].Dose17, change = fades[i].Most * (1 - Math.Exp(-k * dose));
                yield return ($"covered-{i}", "50 30 10");
                yield return ($"exposed-{i}", FormattableString.Invariant($"{50 + change:0.00} 30 10"));
            }
            yield return ("next", "3 days");
        }
    }

    [Fact]
    public async Task Halves_in_a_photograph_are_named_and_kept_with_the_next_look()
    {
        var clock = new HeldClock();
        await using OpenStudio studio = await OpenStudio.StartAsync(clock);
        await BeginAsync(studio, [("title", "photo"), ("samples", "rose\nyellow"), ("light", "readings")]);
        clock.Pass(TimeSpan.FromDays(2));
        (Lab, Lab)[] strips = [(new Lab(47, 36, 12), new Lab(52, 33, 12)), (new Lab(80, 0, 60), new Lab(82, 0, 44))];
        OpenStudio.Seen page = await studio.GetAsync("/permanence/E-01/read");
        page = await studio.UploadAsync(page.Forms.Single(f => f.Action.EndsWith("/photo", StringComparison.Ordinal)), StripPicture.Png([], strips), "strips.png");
        Assert.StartsWith("/permanence/E-01/photo/", page.Address, StringComparison.Ordinal);
        Assert.Contains("area 4", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(page.Forms.Single(f => f.Action.EndsWith("/read-photo", StringComparison.Ordinal)), ("covered-0", "1"), ("exposed-0", "2"), ("covered-1", "3"), ("exposed-1", "4"), ("next", "2,5 days"));
        ExposureEntry<ExposureRead> read = Assert.Single(studio.Store.Exposure(SubjectKey.Exposure(1))!.Readings);
        Assert.Single(read.Said.Photos);
        Assert.Equal(2.5, (read.Said.ReadyAt!.Value - read.At).TotalDays, 1e-6);
        // The picture is drawn in sRGB without a target, so the differences come out as drawn, within its grain.
        foreach ((StripRead strip, (Lab covered, Lab exposed)) in read.Said.Strips.Zip(strips))
        {
            double seen = Distance(strip.Covered!, strip.Exposed), drawn = Math.Sqrt(Math.Pow(covered.L - exposed.L, 2) + Math.Pow(covered.A - exposed.A, 2) + Math.Pow(covered.B - exposed.B, 2));
            Assert.InRange(seen, 0.7 * drawn, 1.3 * drawn);
        }
        Assert.Contains("next look", (await studio.GetAsync("/")).Text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("No strip was named", (await studio.PostAsync("/permanence/E-01/read-photo", [.. page.Forms[0].Hidden.Where(h => h.Key.StartsWith('_')), new("hash", read.Said.Photos[0])])).Text, StringComparison.Ordinal);
    }

    // By hand: halves that differ by (1, 0, 0) before any light and by (5, -3, 0) after it have moved by (4, -3, 0), a difference of 5.
    [Fact]
    public void What_the_halves_differed_by_at_first_is_taken_off_and_is_no_fading()
    {
        var at = new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);
        SubjectKey key = SubjectKey.Exposure(1);
        Entry Kept(int n, StudioDocument document, double hours) => document.ToEntry(EntryId.New(at.AddSeconds(n)), key, at.AddHours(hours));
        static ExposureRead Read(double l, double a) => new([new StripRead("rose", 1, new LabText(l, a, 5)) { Covered = new LabText(50, 30, 5) }]);
        var state = ExposureState.Of(key,
        [
            Kept(1, new ExposureBegun("t", new ExposureLight(LightWay.Lamp) { Lux = 10_000, HoursADay = 24 }, [new ExposedSample("rose", 1)]), 0),
            Kept(2, Read(51, 30), 0.5), Kept(3, Read(55, 27), 100),
        ]);
        IReadOnlyList<StripChange> changes = StripChange.Of(state);
        Assert.Equal((true, false), (changes[0].IsFirst, changes[1].IsFirst));
        Assert.Equal(5, changes[1].DeltaE, 1e-9);
        var found = ExposureFound.Of(state, at.AddHours(100));
        // 10 000 lx for 100 hours are 1 Mlx h; the reading at first is none of the fit.
        Assert.Equal(1, found.Doses[0].MegaluxHours.Value, 1e-9);
        FadingPoint point = Assert.Single(Assert.Single(Assert.Single(found.Series).Strips).Points);
        Assert.Equal((1.0, 5.0), (point.DoseMegaluxHours, point.DeltaE));
        Assert.Equal(at.AddHours(300), found.WhenReached(3));
    }

    [Theory]
    [InlineData("time,lux\n2026-03-02 09:00,10000\n2026-03-02 10:00,10000\n2026-03-02 11:00,20000\n", "0.025 Mlx h")]
    [InlineData("time,lux\n2026-03-02 09:00,dark\n2026-03-02 10:00,bright\n", "is no level in lux")]
    [InlineData("", "none was sent")]
    public async Task The_file_of_a_logger_is_summed_or_refused_with_its_line(string text, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync(new HeldClock());
        OpenStudio.Seen page = await BeginAsync(studio, Begun);
        page = await studio.UploadAsync(page.Forms.Single(f => f.Action.EndsWith("/log", StringComparison.Ordinal)), System.Text.Encoding.UTF8.GetBytes(text), "light.csv");
        Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.Equal(said.Contains("Mlx", StringComparison.Ordinal) ? 1 : 0, studio.Store.Exposure(SubjectKey.Exposure(1))!.Logs.Count);
    }

    [Fact]
    public void Whatever_a_logger_wrote_is_summed_or_refused_in_a_sentence() =>
        Gen.Select(Gen.OneOf(Gen.String, Gen.Select(Gen.String[Gen.Char["0123456789-:;,. \t\nTlux/"], 0, 200], t => "time,lux\n" + t)), Gen.Bool.Nullable()).Sample((text, dayFirst) =>
        {
            (LightLogged? log, string? trouble) = LightForm.ReadLog(text, "file.csv", dayFirst, DateTimeOffset.UnixEpoch);
            Assert.True(log is null != trouble is null);
            if (log is not null) Assert.True(log.Dose.Low <= log.Dose.MegaluxHours && log.Dose.MegaluxHours <= log.Dose.High && log.Steps.Count > 0);
        });

    // ASTM D281: 93 V/m; 3.6 mL of oil for 5 g are 66.96 g in 100 g, by hand.
    [Fact]
    public async Task Another_test_is_reckoned_kept_and_shown_with_all_that_is_known_of_a_lake()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync(new HeldClock());
        SubjectKey lake = SubjectKey.Batch(DateTime.UtcNow.Year, 1);
        studio.Store.AppendAll([new BatchPlanned("a madder lake", "/lakes/plan?dyestuff=madder", 1, "0.1.0") { Dyestuff = "Madder", Salt = "potash alum" }.ToEntry(EntryId.New(DateTimeOffset.UtcNow), lake, DateTimeOffset.UtcNow)]);
        OpenStudio.Seen page = await studio.GetAsync($"/permanence/tests/oil-absorption?of={lake}");
        OpenStudio.Form form = page.Forms.Single(f => f.Action.StartsWith("/permanence/tests", StringComparison.Ordinal));
        Assert.Contains("field needs another look", (await studio.SendAsync(form, ("of", lake.ToString()), ("v-oil", "-3"), ("v-powder", "5"))).Text, StringComparison.Ordinal);
        Assert.Contains("there is no '26-999' here", (await studio.SendAsync(form, ("of", "26-999"), ("v-oil", "3"), ("v-powder", "5"))).Text, StringComparison.Ordinal);
        Assert.Single(studio.Store.EntriesOf(lake));
        page = await studio.SendAsync(form, ("of", lake.ToString()), ("v-oil", "3,6 mL"), ("v-powder", "5 g"));
        Assert.Contains("67.0 g/100 g: as most lakes", page.Text, StringComparison.Ordinal);
        Assert.Contains("Madder", page.Text, StringComparison.Ordinal);
        Assert.Contains("Much slower than the flavonoid yellows", page.Text, StringComparison.Ordinal);
        Assert.Contains("From memory.", (await studio.GetAsync("/permanence/compare")).Text, StringComparison.Ordinal);
    }

    private static async Task<OpenStudio.Seen> BeginAsync(OpenStudio studio, (string, string)[] typed)
    {
        OpenStudio.Seen page = await studio.GetAsync("/permanence/new");
        return await studio.SendAsync(page.Forms.Single(f => f.Action == "/permanence"), typed);
    }

    private static double Distance(LabText a, LabText b) => Math.Sqrt(Math.Pow(a.LabL - b.LabL, 2) + Math.Pow(a.LabA - b.LabA, 2) + Math.Pow(a.LabB - b.LabB, 2));
}
