using System.Text.Json;
using Alumroot.App.Bench;
using Alumroot.App.Recording;
using Alumroot.App.Requests;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Studio;

/// <summary>The entries of the invented demo studio, from <c>data/demo/studio.json</c>, with their times counted back from now so that what waits there is waiting now.</summary>
internal static class DemoRecord
{
    private const string Resource = "demo/studio.json";
    private static readonly TimeSpan ShelfFilled = TimeSpan.FromDays(60);

    /// <summary>All entries, in order of time.</summary>
    /// <param name="now">The time to count back from.</param>
    public static IReadOnlyList<Entry> At(DateTimeOffset now)
    {
        using Stream stream = typeof(DemoRecord).Assembly.GetManifestResourceStream(Resource) ?? throw new InvalidOperationException($"{Resource} was not built into the program");
        using JsonDocument document = JsonDocument.Parse(stream);
        JsonElement root = document.RootElement;
        var entries = new List<Entry>();
        Dictionary<string, string> lots = Shelf(root.GetProperty("lots"), now - ShelfFilled, entries);
        entries.Add(new StudioSet { Maker = DemoStudio.Name }.ToEntry(Id("ways-1"), SubjectKey.Studio, now - ShelfFilled + TimeSpan.FromMinutes(55)));
        int bowls = 0;
        foreach (JsonElement bowl in root.GetProperty("bowls").EnumerateArray())
        {
            DateTimeOffset at = now - ShelfFilled + TimeSpan.FromMinutes(60 + bowls);
            entries.Add(new BowlWeighed(Text(bowl, "bowl")!, Value(Text(bowl, "empty")!)).ToEntry(Id($"bowl-{++bowls}"), SubjectKey.Studio, at));
        }
        foreach (JsonElement target in root.GetProperty("targets").EnumerateArray())
            entries.Add(new TargetKept(Text(target, "title")!, [.. target.GetProperty("patches").EnumerateArray().Select(p => new LabText(p[0].GetDouble(), p[1].GetDouble(), p[2].GetDouble()))])
                .ToEntry(Id("target-1"), SubjectKey.Studio, now - ShelfFilled + TimeSpan.FromMinutes(90)));
        var counts = new Dictionary<int, int>();
        var lakes = new Dictionary<string, SubjectKey>(StringComparer.Ordinal);
        foreach (JsonElement lake in root.GetProperty("lakes").EnumerateArray())
        {
            DateTimeOffset begun = now - TimeSpan.FromDays(lake.GetProperty("days").GetDouble());
            int count = counts[begun.Year] = counts.GetValueOrDefault(begun.Year) + 1;
            SubjectKey key = lakes[Text(lake, "name")!] = SubjectKey.Batch(begun.Year, count);
            Lake(lake, key, begun, lots, Text(lake, "repeats") is { } first ? lakes[first] : null, entries);
        }
        int paints = 0;
        foreach (JsonElement paint in root.GetProperty("paints").EnumerateArray()) DemoPaint.Add(paint, SubjectKey.Paint(++paints), lakes[Text(paint, "lake")!], lots, now, entries);
        entries.AddRange(DemoLight.At(now, lakes));
        DemoTrial.Add(root.GetProperty("trials"), now, entries);
        return [.. entries.OrderBy(e => e.At.UtcTicks)];
    }

    private static Dictionary<string, string> Shelf(JsonElement lots, DateTimeOffset at, List<Entry> entries)
    {
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (JsonElement lot in lots.EnumerateArray())
        {
            int number = keys.Count + 1;
            ShelfForm form = ShelfForm.Read(name => Text(lot, name.Replace('-', '_')) ?? (name == ShelfForm.Came ? Text(lot, "came") : null));
            if (form.Document is not { } bought) throw new InvalidOperationException($"{Resource}: lot {number}: {string.Join(" ", form.Troubles.Values)}");
            entries.Add(bought.ToEntry(Id($"lot-{number:000}"), SubjectKey.Lot(number), at.AddMinutes(number)));
            keys[bought.Title] = SubjectKey.Lot(number).ToString();
        }
        return keys;
    }

    private static void Lake(JsonElement lake, SubjectKey key, DateTimeOffset begun, Dictionary<string, string> lots, SubjectKey? repeats, List<Entry> entries)
    {
        JsonElement plan = lake.GetProperty("plan");
        PlanRequest request = PlanRequest.From(field => Text(plan, field));
        Dictionary<LotClass, string> chosen = lake.TryGetProperty("lots", out JsonElement named)
            ? named.EnumerateObject().ToDictionary(l => Enum.Parse<LotClass>(l.Name, ignoreCase: true), l => lots[l.Value.GetString()!])
            : [];
        BatchPlanned planned = BatchBeginning.Of(PlanReader.Read(request)) with { Lots = [.. chosen.Select(c => new LotChoice(c.Key, c.Value))], FromBatch = repeats?.ToString(), Origin = repeats is null ? BatchOrigin.Own : BatchOrigin.Repeat };
        DateTimeOffset at = begun;
        int number = 0;
        entries.Add(planned.ToEntry(Next(), key, at));
        foreach (JsonElement act in lake.GetProperty("acts").EnumerateArray())
        {
            at = at.AddMinutes(act.GetProperty("minutes").GetDouble()).AddSeconds(20);
            entries.Add(Step(act, at, chosen).ToEntry(Next(), key, at));
        }
        if (lake.TryGetProperty("colours", out JsonElement colours))
            foreach (JsonElement colour in colours.EnumerateArray()) entries.Add(Colour(colour).ToEntry(Next(), key, begun.AddMinutes(colour.GetProperty("minutes").GetDouble())));
        if (Text(lake, "given_up") is { } reason) entries.Add(new BatchGivenUp(reason).ToEntry(Next(), key, at.AddMinutes(10)));
        string[] tags = [.. lake.GetProperty("tags").EnumerateArray().Select(t => t.GetString()!)];
        if (tags.Length > 0) entries.Add(new Tagged(tags).ToEntry(Next(), key, begun.AddSeconds(5)));

        EntryId Next() => Id($"{key}-{++number:000}");
    }

    internal static SwatchRead Colour(JsonElement element)
    {
        double[] lab = [.. element.GetProperty("lab").EnumerateArray().Select(v => v.GetDouble())];
        return new SwatchRead(Enum.Parse<SwatchState>(Text(element, "state")!, ignoreCase: true), new LabText(lab[0], lab[1], lab[2]))
        {
            WithinDeltaE2000 = element.TryGetProperty("within", out JsonElement within) ? within.GetDouble() : null,
            How = Text(element, "how"),
            Ground = Text(element, "ground") is { } ground ? Enum.Parse<SwatchGround>(ground, ignoreCase: true) : null,
            GroundColour = element.TryGetProperty("bare", out JsonElement bare) ? new LabText(bare[0].GetDouble(), bare[1].GetDouble(), bare[2].GetDouble()) : null,
            WetMicrometres = element.TryGetProperty("wet_um", out JsonElement wet) ? wet.GetDouble() : null,
        };
    }

    private static BatchStep Step(JsonElement element, DateTimeOffset at, Dictionary<LotClass, string> lots)
    {
        Act act = Acts.Find(Text(element, "act")) ?? throw new InvalidOperationException($"{Resource}: no act '{Text(element, "act")}'");
        var values = new List<Measured>();
        if (Text(element, "amount") is { } amount) values.Add(Value(amount) with { Instrument = amount.EndsWith('L') ? "jug" : "scale" });
        if (Text(element, "ph") is { } ph) values.Add(TypedAmount.PhOf(ph, "strip").Value! with { ResolutionSi = 0.5 });
        if (Text(element, "conductivity") is { } conductivity) values.Add(TypedAmount.ConductivityOf(conductivity).Value!);
        if (element.TryGetProperty("sieves", out JsonElement sieves))
        {
            values.AddRange(sieves.EnumerateObject().Select(s => Value(s.Value.GetString()!) with { Name = BenchForm.Sieve + s.Name, Instrument = "scale" }));
            values.Add(BenchForm.Sum(values));
        }
        if (Text(element, "row") is { } row) values.AddRange(RowText.Read(row).Values);
        LotClass? role = act == Acts.DyestuffIn ? LotClass.Dyestuff : act == Acts.SaltIn ? LotClass.Salt : act == Acts.AlkaliDissolved ? LotClass.Alkali : null;
        return new BatchStep(act.Step)
        {
            Act = act.Name,
            Ended = act.Ends,
            Values = values,
            Uses = role is { } taken && lots.TryGetValue(taken, out string? lot) ? [new LotUse(lot, values[0])] : [],
            ReadyAt = Text(element, "wait") is { } wait ? at + WaitText.Read(wait) : null,
            Note = Text(element, "note"),
        };
    }

    internal static Measured Value(string typed) => TypedAmount.Amount(typed).Value ?? throw new InvalidOperationException($"{Resource}: '{typed}' cannot be read");

    internal static string? Text(JsonElement element, string name) => element.TryGetProperty(name, out JsonElement text) ? text.GetString() : null;

    /// <summary>An entry number of the demo.</summary>
    internal static EntryId Id(string text) => EntryId.TryRead($"demo-{text}")!.Value;
}
