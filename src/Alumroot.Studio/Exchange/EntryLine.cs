using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Exchange;

/// <summary>An entry as one line of JSON.</summary>
internal static class EntryLine
{
    private const string TimeForm = "yyyy-MM-dd'T'HH:mm:ss.fffzzz";

    public static string Write(Entry entry)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = Payload.Compact.Encoder }))
        {
            json.WriteStartObject();
            json.WriteString("id", entry.Id.Text);
            json.WriteString("subject", entry.Subject.ToString());
            json.WriteString("document", entry.Kind.Name);
            json.WriteNumber("document_version", entry.Kind.Version);
            json.WriteString("at", entry.At.ToString(TimeForm, CultureInfo.InvariantCulture));
            json.WriteString("corrects", entry.Corrects?.Text);
            json.WritePropertyName("payload");
            json.WriteRawValue(entry.Payload.Text);
            json.WriteString("checksum_sha256", entry.Checksum);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>The entry, or null when the line is none or its checksum does not fit.</summary>
    public static Entry? TryRead(string line)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(line);
            JsonElement root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object) return null;
            if (EntryId.TryRead(Text(root, "id")) is not { } id || SubjectKey.TryRead(Text(root, "subject")) is not { } subject || Text(root, "document") is not { } name) return null;
            if (!root.TryGetProperty("document_version", out JsonElement v) || v.ValueKind != JsonValueKind.Number || !v.TryGetInt32(out int version)) return null;
            if (!root.TryGetProperty("payload", out JsonElement content) || Payload.TryRead(content.GetRawText()) is not { } payload) return null;
            if (!DateTimeOffset.TryParseExact(Text(root, "at"), TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset at)) return null;
            string? corrected = Text(root, "corrects");
            EntryId? corrects = EntryId.TryRead(corrected);
            var kind = new DocumentKind(name, version);
            if ((corrected is not null && corrects is null) || corrects == id || !kind.IsWellFormed) return null;
            var entry = new Entry(id, subject, kind, payload, at, corrects);
            return entry.Checksum == Text(root, "checksum_sha256") ? entry : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string? Text(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}
