using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Alumroot.App.Output;

/// <summary>The one way this program writes JSON: field names in snake case, two-space indents, one document.</summary>
public static class Json
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        DictionaryKeyPolicy = null,
        DefaultIgnoreCondition = JsonIgnoreCondition.Never,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new EstimateConverter(), new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower) },
    };

    /// <summary>The name of an enumeration's value as it stands in JSON.</summary>
    public static string Name(Enum value) => JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString());

    /// <summary>The value as text, without a line end.</summary>
    /// <param name="value">A record whose names carry their units.</param>
    public static string Text<T>(T value) => JsonSerializer.Serialize(value, Options);
}
