using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using SkiaSharp;

namespace Alumroot.App.Tests;

/// <summary>The forms of the bench as a browser without script sends them: one batch from the plan to the pigment, and everything that can go wrong on the way.</summary>
public sealed partial class BenchPostTests
{
    private const string Plan = "/lakes/plan?salt=potash-alum&salt-amount=50+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5&vessel=20+L";

    private static SubjectKey First => SubjectKey.Batch(DateTime.Now.Year, 1);

    [Fact]
    public async Task A_batch_goes_from_the_plan_to_the_pigment_and_ends_at_its_aim()
    {
        var clock = new HeldClock();
        await using OpenStudio studio = await OpenStudio.StartAsync(clock);
        OpenStudio.Seen page = await BeginAsync(studio);
        for (int turn = 0; turn < 80 && studio.Store.Batch(First)!.Reached != StepKind.Sieve; turn++)
        {
            clock.Pass(TimeSpan.FromMinutes(75));
            page = await AnswerAsync(studio, page);
        }
        BatchState batch = studio.Store.Batch(First)!;
        Assert.Equal(BatchStage.Pigment, batch.Stage);
        Assert.Equal(0.0151, batch.PigmentKg!.Value, 6);
        double last = batch.Steps.Last(s => s.Act == "alkali-read").Values[0].SiValue;
        Assert.InRange(last, 6.2, 6.8);
        Assert.Contains(batch.Steps, s => s.Act == "wash-done");
        Assert.Empty(studio.Store.Check());
        Assert.Contains("of pigment", (await studio.GetAsync($"/lakes/{First}")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drying_tells_how_long_it_still_takes_and_equal_weights_too_close_in_time_are_not_enough()
    {
        var clock = new HeldClock();
        await using OpenStudio studio = await OpenStudio.StartAsync(clock);
        OpenStudio.Seen page = await BeginAsync(studio);
        for (int turn = 0; turn < 80 && studio.Store.Batch(First)!.Reached != StepKind.Filter; turn++) page = await AnswerAsync(studio, page);
        for (int turn = 0; turn < 4 && !page.Text.Contains("Weigh the cake", StringComparison.Ordinal); turn++) page = await AnswerAsync(studio, page);
        // 16 + 84 exp(-t/6): 100, 59.1, 38.1, 27.4 g at 0, 4, 8, 12 h, worked by hand.
        foreach (string grams in new[] { "100 g", "59.1 g", "38.1 g", "27.4 g" })
        {
            page = await studio.SendAsync(page.BenchForm("dry-weighed"), ("amount", grams));
            clock.Pass(TimeSpan.FromHours(4));
            if (grams != "27.4 g") page = await studio.SendAsync(page.BenchForm("dry-on"), ("wait", "1 min"));
        }
        Assert.Matches(@"will come to 1[567][.\d]* g \(1[3-6][.\d]* to 1[6-9][.\d]*\), in about \d+ h \(", page.Text.Replace('\u00A0', ' '));
        page = await studio.SendAsync(page.BenchForm("dry-on"), ("wait", "1 min"));
        page = await studio.SendAsync(page.BenchForm("dry-weighed"), ("amount", "16 g"));
        page = await studio.SendAsync(page.BenchForm("dry-on"), ("wait", "1 min"));
        clock.Pass(TimeSpan.FromMinutes(20));
        page = await studio.SendAsync(page.BenchForm("dry-weighed"), ("amount", "16 g"));
        Assert.Contains("too close in time", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dilution_row_is_kept_and_says_what_is_left_in_the_plant()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        foreach ((string act, (string, string)[] typed) in new (string, (string, string)[])[] { ("dyestuff-in", [("amount", "100 g")]), ("draw-out", [("wait", "1 min")]), ("strained", [("amount", "2.6 L")]) })
            page = await studio.SendAsync(page.BenchForm(act), typed);
        Assert.Contains("only what is usual", page.Text, StringComparison.Ordinal);
        page = await studio.GetAsync($"/lakes/{First}/bench?do=row-read");
        page = await studio.SendAsync(page.BenchForm("row-read"), ("row", "1/2 0.62; 1/4 nought"));
        Assert.Contains("is no absorbance", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"1/2 0.62; 1/4 nought\"", page.Html, StringComparison.Ordinal);
        page = await studio.SendAsync(page.BenchForm("row-read"), ("row", "1/2 0.62; 25% 0,31; 1/8 69.5:100"));
        Assert.Contains("The liquor absorbs 1.2", page.Text, StringComparison.Ordinal);
        page = await studio.SendAsync(page.BenchForm("another-bath"));
        page = await studio.SendAsync(page.BenchForm("draw-out"), ("wait", "1 min"));
        page = await studio.SendAsync(page.BenchForm("strained"), ("amount", "2.8 L"));
        page = await studio.GetAsync($"/lakes/{First}/bench?do=row-read");
        page = await studio.SendAsync(page.BenchForm("row-read"), ("row", "1/1 0.4; 1/2 0.2"));
        Assert.Contains("By the dilution rows of 2 baths", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_looked_for_is_found_in_the_record_beside_the_handbook_and_a_plan_from_the_record_tells_times()
    {
        var clock = new HeldClock();
        await using OpenStudio studio = await OpenStudio.StartAsync(clock);
        OpenStudio.Seen page = await BeginAsync(studio);
        Assert.Contains($"In your record {First}", (await studio.GetAsync("/find?q=madder")).Text.Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("In your record", (await studio.GetAsync("/find?q=cochineal")).Text, StringComparison.Ordinal);
        Assert.Contains("no own batch yet", (await studio.GetAsync(Plan)).Text, StringComparison.Ordinal);
        for (int turn = 0; turn < 80 && studio.Store.Batch(First)!.Steps.All(s => s.Act != "drawn-off"); turn++)
        {
            clock.Pass(TimeSpan.FromHours(5));
            page = await AnswerAsync(studio, page);
        }
        Assert.Matches(@"settling 5 h \([\d.]+ to [\d.]+\), from one lake of yours", (await studio.GetAsync(Plan)).Text.Replace('\u00A0', ' '));
    }

    [Fact]
    public async Task The_same_form_twice_is_one_entry_and_both_answers_say_kept()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Form form = page.BenchForm("dyestuff-in");
        OpenStudio.Seen first = await studio.SendAsync(form, ("amount", "100 g")), second = await studio.SendAsync(form, ("amount", "100 g"));
        Assert.Equal(2, studio.Store.Count());
        Assert.All([first, second], seen => Assert.Matches(@"Kept \d\d:\d\d:\d\d: plant into the water: 100 g", seen.Text));
    }

    [Fact]
    public async Task A_second_device_on_the_same_step_is_told_and_adds_nothing()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Seen other = await studio.GetAsync($"/lakes/{First}/bench");
        await studio.SendAsync(page.BenchForm("dyestuff-in"), ("amount", "100 g"));
        OpenStudio.Seen told = await studio.SendAsync(other.BenchForm("dyestuff-in"), ("amount", "100 g"));
        Assert.Equal(2, studio.Store.Count());
        Assert.Contains("from another device", told.Text, StringComparison.Ordinal);
        Assert.Contains("Extract: draw the colour out", told.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_plan_posted_twice_begins_one_batch()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Plan)).Forms.Single(f => f.Action == "/lakes");
        Assert.Equal((await studio.SendAsync(form)).Address, (await studio.SendAsync(form)).Address);
        Assert.Single(studio.Store.List());
    }

    [Theory]
    [InlineData("5o g", "Did you mean 50 g?")]
    [InlineData("-3 g", "below nothing")]
    [InlineData("", "Nothing was typed")]
    [InlineData("2 L", "is a volume")]
    public async Task A_slip_is_said_at_its_field_with_what_was_typed_and_nothing_is_kept(string typed, string said)
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Form form = page.BenchForm("dyestuff-in");
        OpenStudio.Seen again = await studio.SendAsync(form, ("amount", typed));
        Assert.Equal(1, studio.Store.Count());
        Assert.Contains(said, again.Text, StringComparison.Ordinal);
        if (typed.Length > 0) Assert.Contains($"value=\"{typed}\"", again.Html, StringComparison.Ordinal);
        // The mended form is the same entry.
        Assert.Equal(form.Field("entry"), again.BenchForm("dyestuff-in").Field("entry"));
        await studio.SendAsync(again.BenchForm("dyestuff-in"), ("amount", "100 g"));
        Assert.Equal(2, studio.Store.Count());
    }

    [Fact]
    public async Task Two_readings_of_a_number_become_two_buttons()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Seen asked = await studio.SendAsync(page.BenchForm("dyestuff-in"), ("amount", "1,500 g"));
        Assert.Equal(1, studio.Store.Count());
        Assert.Contains("Which is it?", asked.Text, StringComparison.Ordinal);
        Assert.Equal(["1.5 g", "1500 g"], asked.Forms.Where(f => f.Field("act") == "dyestuff-in").SelectMany(f => f.Buttons).Select(b => b.Value).Where(v => v != "100.0 g").Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_weight_that_looks_like_plan_and_bowl_is_asked_and_either_answer_is_one_entry()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen own = await studio.GetAsync("/studio");
        await studio.SendAsync(own.Forms.Single(f => f.Action == "/studio/bowls"), ("bowl", "blue"), ("empty", "212 g"));
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Seen asked = await studio.SendAsync(page.BenchForm("dyestuff-in"), ("amount", "312 g"));
        Assert.Contains("the planned weight and the bowl blue together", asked.Text, StringComparison.Ordinal);
        OpenStudio.Form without = asked.Forms.First(f => f.Field("bowl") == "blue");
        await studio.SendAsync(without, ("amount", "312 g"));
        BatchStep kept = Assert.Single(studio.Store.Batch(First)!.Steps);
        Assert.Equal(0.1, kept.Values[0].SiValue, 9);
        Assert.Contains("312 g less bowl blue", kept.Values[0].Typed, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_far_too_much_is_asked_and_can_be_kept_as_it_is()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Seen asked = await studio.SendAsync(page.BenchForm("dyestuff-in"), ("amount", "180 g"));
        Assert.Contains("far more than the plan says", asked.Text, StringComparison.Ordinal);
        await studio.SendAsync(asked.Forms.First(f => f.Field("sure") == "yes"), ("amount", "180 g"));
        Assert.Equal(0.18, Assert.Single(studio.Store.Batch(First)!.Steps).Values[0].SiValue, 9);
    }

    [Fact]
    public async Task Taking_back_returns_to_the_step_and_bringing_back_undoes_it()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        OpenStudio.Seen next = await studio.SendAsync(page.BenchForm("dyestuff-in"), ("amount", "100 g"));
        OpenStudio.Seen back = await studio.SendAsync(next.Forms.Single(f => f.Action.EndsWith("/take-back", StringComparison.Ordinal)));
        Assert.Contains("the plant into the water", back.Text, StringComparison.Ordinal);
        Assert.Empty(studio.Store.Batch(First)!.Steps);
        OpenStudio.Seen whole = await studio.GetAsync($"/lakes/{First}");
        Assert.Contains("taken back", whole.Text, StringComparison.Ordinal);
        await studio.SendAsync(whole.Forms.Single(f => f.Action.EndsWith("/take-back", StringComparison.Ordinal)));
        Assert.Single(studio.Store.Batch(First)!.Steps);
    }

    [Fact]
    public async Task A_correction_keeps_the_old_entry_and_moves_the_stock_with_it()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen shelf = await studio.GetAsync("/shelf/new");
        await studio.SendAsync(shelf.Forms.Single(f => f.Action == "/shelf"), ("kind", "dyestuff"), ("title", "chopped madder"), ("amount", "500 g"), ("plan-name", "madder"));
        OpenStudio.Seen page = await BeginAsync(studio, Plan + "&dyestuff-lot=lot-1");
        await studio.SendAsync(page.BenchForm("dyestuff-in"), ("amount", "100 g"));
        Assert.Equal(0.4, studio.Store.Lot(SubjectKey.Lot(1))!.LeftSi!.Value, 9);
        string entry = studio.Store.Batch(First)!.Taken[0].Entry.Id.Text;
        OpenStudio.Seen correct = await studio.GetAsync($"/lakes/{First}/correct?corrects={entry}");
        OpenStudio.Form form = correct.Forms.Single(f => f.Action.EndsWith("/correct", StringComparison.Ordinal));
        Assert.Contains("Did you mean 90 g?", (await studio.SendAsync(form, ("value-0", "9o g"))).Text, StringComparison.Ordinal);
        await studio.SendAsync(form, ("value-0", "90 g"), ("note", "read the scale wrong"));
        BatchState batch = studio.Store.Batch(First)!;
        Assert.Equal(0.09, Assert.Single(batch.Steps).Values[0].SiValue, 9);
        Assert.Equal(1, batch.Entries.Count(e => e.Standing == Standing.Superseded));
        Assert.Equal(0.41, studio.Store.Lot(SubjectKey.Lot(1))!.LeftSi!.Value, 9);
    }

    [Fact]
    public async Task A_photograph_is_kept_and_shown_upright_and_no_other_file_is()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await BeginAsync(studio);
        OpenStudio.Form form = (await studio.GetAsync($"/lakes/{First}")).Forms.Single(f => f.Action.EndsWith("/note", StringComparison.Ordinal));
        await studio.UploadAsync(form, Jpeg(600, 400), "cake.jpg");
        string hash = Assert.Single(studio.Store.Batch(First)!.Photos);
        Assert.Equal(HttpStatusCode.OK, (await studio.GetAsync($"/photo/{hash}/small")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await studio.GetAsync("/photo/..%2f..%2fstudio.db")).Status);
        OpenStudio.Form again = (await studio.GetAsync($"/lakes/{First}")).Forms.Single(f => f.Action.EndsWith("/note", StringComparison.Ordinal));
        OpenStudio.Seen refused = await studio.UploadAsync(again, "GIF89a and more"u8.ToArray(), "cake.gif");
        Assert.Contains("The photograph was not taken. The file is not a JPEG, PNG or WebP picture.", refused.Text, StringComparison.Ordinal);
        Assert.Single(studio.Store.Batch(First)!.Photos);
    }

    [Fact]
    public async Task Giving_up_needs_a_reason_and_is_kept_as_knowledge()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await BeginAsync(studio);
        OpenStudio.Form form = (await studio.GetAsync($"/lakes/{First}")).Forms.Single(f => f.Action.EndsWith("/give-up", StringComparison.Ordinal));
        Assert.Contains("write what happened", (await studio.SendAsync(form)).Text, StringComparison.Ordinal);
        await studio.SendAsync(form, ("reason", "browned, bath too hot"));
        Assert.Equal(BatchStage.GivenUp, studio.Store.Batch(First)!.Stage);
        Assert.Contains("browned, bath too hot", (await studio.GetAsync("/lakes?stage=given-up&q=browned")).Text + (await studio.GetAsync($"/lakes/{First}")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_from_elsewhere_is_refused()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        await BeginAsync(studio);
        OpenStudio.Seen answer = await studio.PostAsync($"/lakes/{First}/bench", [KeyValuePair.Create("act", "dyestuff-in"), KeyValuePair.Create("amount", "100 g")]);
        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Equal(1, studio.Store.Count());
    }

    [Fact]
    public async Task A_plan_whose_amounts_are_withheld_begins_nothing()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Form form = (await studio.GetAsync(Plan)).Forms.Single(f => f.Action == "/lakes");
        KeyValuePair<string, string>[] swapped = [.. form.Hidden.Select(h => h.Key == "plan" ? KeyValuePair.Create("plan", Plan.Replace("20+L", "4+L", StringComparison.Ordinal)) : h)];
        OpenStudio.Seen answer = await studio.PostAsync("/lakes", swapped);
        Assert.Equal(0, studio.Store.Count());
        Assert.Contains("Change this first", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_that_does_not_fit_is_said_and_an_explanation_can_be_taken()
    {
        await using OpenStudio studio = await OpenStudio.StartAsync();
        OpenStudio.Seen page = await BeginAsync(studio);
        foreach ((string act, (string, string)[] typed) in new (string, (string, string)[])[]
        {
            ("dyestuff-in", [("amount", "100 g")]), ("draw-out", [("wait", "1 min")]), ("strained", [("amount", "3 L")]), ("liquor-read", []), ("salt-in", [("amount", "50 g")]), ("salt-read", [("ph", "3.5")]),
            ("alkali-dissolved", [("amount", "19.3 g")]), ("alkali-in", [("amount", "14.5 g"), ("sure", "yes")]), ("alkali-read", [("ph", "3.5")]),
        })
            page = await studio.SendAsync(page.BenchForm(act), typed);
        Assert.Contains("Does not add up:", page.Text, StringComparison.Ordinal);
        OpenStudio.Form taken = page.Forms.First(f => f.Action.EndsWith("/plan", StringComparison.Ordinal));
        await studio.SendAsync(taken);
        Assert.NotEqual(Alumroot.App.Requests.PlanRequest.FromAddress(Plan.Replace('+', ' '))!.Address, studio.Store.Batch(First)!.Plan!.PlanAddress);
        Assert.Equal(1, studio.Store.Batch(First)!.PlanCount);
    }

    private static async Task<OpenStudio.Seen> BeginAsync(OpenStudio studio, string plan = Plan) =>
        await studio.SendAsync((await studio.GetAsync(plan)).Forms.Single(f => f.Action == "/lakes"));

    // What a maker would do: the planned amount, the key nearest to what is expected, and good washes.
    private static async Task<OpenStudio.Seen> AnswerAsync(OpenStudio studio, OpenStudio.Seen page)
    {
        OpenStudio.Form form = page.Forms.First(f => f.Action.EndsWith("/bench", StringComparison.Ordinal));
        int washes = studio.Store.Batch(First)!.Steps.Count(s => s.Act == "wash-read");
        return await studio.SendAsync(form, form.Field("act") switch
        {
            "salt-read" or "alkali-read" or "liquor-read" => [("ph", Nearest(form, page))],
            "wash-read" => [("conductivity", $"{3000 / (washes + 1) / (washes + 1)}")],
            "dry-weighed" => [("amount", "15.4 g")],
            "ground" => [("amount", "15.2 g")],
            "sieved" => [("sieve-125", "9.1 g"), ("sieve-pan", "6 g")],
            "dry-on" => [("wait", "1 min")],
            "filter-off" => [("amount", "120 g")],
            _ when form.Buttons.Count > 0 => [form.Buttons[0]],
            _ => [],
        });
    }

    private static string Nearest(OpenStudio.Form form, OpenStudio.Seen page) => Expected().Match(page.Text) is { Success: true } match
        ? form.Buttons.MinBy(b => Math.Abs(double.Parse(b.Value, CultureInfo.InvariantCulture) - double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture))).Value
        : form.Buttons[2].Value;

    private static byte[] Jpeg(int width, int height)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(new SKColor(150, 40, 60));
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        return data.ToArray();
    }

    [GeneratedRegex(@"Expected ([0-9.]+)")]
    private static partial Regex Expected();
}
