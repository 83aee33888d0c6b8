using System.Text.Json;

namespace Alumroot.Studio.Exchange;

/// <summary>The first file of an export: what it is and how much there must be.</summary>
internal sealed record Manifest(string Format, int Schema, string ProgramVersion, string ExportedAt, long Entries, string EntriesSha256, int Photos)
{
    public const string FormatName = "alumroot-studio";

    /// <summary>The schema that is written. All from 1 to this are read.</summary>
    public const int Newest = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    public string Write() => JsonSerializer.Serialize(this, Options);

    public static Manifest? TryRead(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<Manifest>(text, Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
