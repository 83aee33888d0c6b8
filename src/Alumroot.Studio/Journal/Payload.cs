using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Alumroot.Studio.Journal;

/// <summary>The content of an entry: one JSON object in compact form, kept exactly as it was written even when no program knows its fields any more.</summary>
public sealed record Payload
{
    /// <summary>The most bytes an entry's content may hold in UTF-8.</summary>
    public const int MostBytes = 64 << 10;

    internal static readonly JsonSerializerOptions Compact = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private Payload(string text) => Text = text;

    /// <summary>The JSON, without blanks or line ends between its parts.</summary>
    public string Text { get; }

    /// <summary>Reads a JSON object; null when the text is none, or holds more than <see cref="MostBytes"/>.</summary>
    public static Payload? TryRead(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Encoding.UTF8.GetByteCount(text) > MostBytes) return null;
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return document.RootElement.ValueKind == JsonValueKind.Object ? new Payload(JsonSerializer.Serialize(document.RootElement, Compact)) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Every text in the content, for the search.</summary>
    public IEnumerable<string> Texts()
    {
        using JsonDocument document = JsonDocument.Parse(Text);
        return [.. TextsOf(document.RootElement)];
    }

    /// <summary>The hashes of the photographs that the content names.</summary>
    public IReadOnlyList<string> PhotoHashes()
    {
        using JsonDocument document = JsonDocument.Parse(Text);
        return document.RootElement.TryGetProperty("photos", out JsonElement photos) && photos.ValueKind == JsonValueKind.Array
            ? [.. photos.EnumerateArray().Where(p => p.ValueKind == JsonValueKind.String).Select(p => p.GetString()!)]
            : [];
    }

    private static IEnumerable<string> TextsOf(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => [element.GetString()!],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(TextsOf),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => TextsOf(p.Value)),
        _ => [],
    };
}
