using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>What came of reading an entry's content.</summary>
public abstract record DocumentReading
{
    private DocumentReading()
    {
    }

    /// <summary>It reads.</summary>
    /// <param name="Document">The content.</param>
    public sealed record Known(StudioDocument Document) : DocumentReading;

    /// <summary>This program does not know the document or its version. The content is kept as it is.</summary>
    public sealed record Unknown : DocumentReading;

    /// <summary>The document is known, but the content does not follow its form.</summary>
    /// <param name="Why">What did not fit.</param>
    public sealed record Unreadable(string Why) : DocumentReading;
}

/// <summary>Documents to content and back.</summary>
public static class DocumentText
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower, allowIntegerValues: false) },
    };

    private static readonly Measured Nothing = new("amount", "", 0, Measured.Kilogram);

    // A later version only adds fields, so its type reads every earlier one too.
    private static readonly Dictionary<DocumentKind, Type> Known = new StudioDocument[]
    {
        new BatchPlanned("", "", 0, ""), new BatchStep(StepKind.Extract), new BatchGivenUp(""), new BatchUsedUp(), new Noted(), new Tagged([]),
        new LotBought(LotClass.Salt, "", Nothing), new LotCounted(Nothing), new BowlWeighed("", Nothing), new StudioSet(), new Withdrawn(),
        new SwatchRead(SwatchState.Dry, new LabText(0, 0, 0)), new TargetKept("", []), new PaintMade("", ""), new PaintUsedUp(), new SpotTested([]),
        new ExposureBegun("", new ExposureLight(LightWay.Readings), []), new LightRead(Nothing), new LightLogged(default, new DoseSpan(0, 0, 0), []), new ExposureRead([]), new ExposureEnded(), new TestDone("", 0, ""),
        new TrialBegun("", "", 0, ""), new TrialJarRead(1), new TrialEnded(),
    }.SelectMany(d => Enumerable.Range(1, d.Kind.Version).Select(version => (Kind: new DocumentKind(d.Kind.Name, version), Type: d.GetType()))).ToDictionary(d => d.Kind, d => d.Type);

    /// <summary>The document as the content of an entry.</summary>
    /// <exception cref="ArgumentException">It is longer than an entry may be.</exception>
    public static Payload Write(StudioDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Payload.TryRead(JsonSerializer.Serialize(document, document.GetType(), Options))
            ?? throw new ArgumentException($"An entry holds at most {Payload.MostBytes} bytes.", nameof(document));
    }

    /// <summary>Reads the content of an entry.</summary>
    public static DocumentReading Read(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (!Known.TryGetValue(entry.Kind, out Type? type)) return new DocumentReading.Unknown();
        try
        {
            return new DocumentReading.Known((StudioDocument)JsonSerializer.Deserialize(entry.Payload.Text, type, Options)!);
        }
        catch (JsonException e)
        {
            return new DocumentReading.Unreadable(e.Message);
        }
    }

    /// <summary>An entry that holds a document.</summary>
    public static Entry ToEntry(this StudioDocument document, EntryId id, SubjectKey subject, DateTimeOffset at, EntryId? corrects = null)
    {
        ArgumentNullException.ThrowIfNull(document);
        return new Entry(id, subject, document.Kind, Write(document), at, corrects);
    }
}
