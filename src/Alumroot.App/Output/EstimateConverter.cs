using System.Text.Json;
using System.Text.Json.Serialization;
using Alumroot.Quantities;

namespace Alumroot.App.Output;

/// <summary>Writes an estimate as <c>{ "value", "low", "high" }</c>, the ends of its 90 % interval.</summary>
internal sealed class EstimateConverter : JsonConverter<Estimate>
{
    public override Estimate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using JsonDocument document = JsonDocument.ParseValue(ref reader);
        JsonElement root = document.RootElement;
        return new Estimate(root.GetProperty("value").GetDouble(), root.GetProperty("low").GetDouble(), root.GetProperty("high").GetDouble());
    }

    public override void Write(Utf8JsonWriter writer, Estimate value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteNumber("value", value.Value);
        writer.WriteNumber("low", value.Low);
        writer.WriteNumber("high", value.High);
        writer.WriteEndObject();
    }
}
