using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Requests;

namespace Alumroot.App.Verbs;

/// <summary>The fields of a plan in a JSON file.</summary>
internal static class FieldFile
{
    /// <summary>Reads the fields; what is wrong with the file is said on the channel of messages.</summary>
    /// <param name="path">The file, - for standard input, or null for no fields.</param>
    /// <param name="channels">Where to say what is wrong.</param>
    /// <param name="fields">The fields by their names.</param>
    public static bool TryRead(string? path, Channels channels, out Dictionary<string, string> fields)
    {
        fields = new Dictionary<string, string>(StringComparer.Ordinal);
        if (path is null) return true;
        try
        {
            string text = path == "-" ? Console.In.ReadToEnd() : File.ReadAllText(path);
            using JsonDocument document = JsonDocument.Parse(text);
            if (document.RootElement.ValueKind != JsonValueKind.Object)
                return Said($"'{path}' holds JSON, but not an object with the plan's fields. Write it like {{ \"salt\": \"potash-alum\", \"water\": \"2 L\" }}.");
            foreach (JsonProperty p in document.RootElement.EnumerateObject())
            {
                string name = p.Name.Replace('_', '-');
                if (!PlanFields.All.Contains(name, StringComparer.Ordinal))
                    return Said($"'{path}': the plan has no field '{p.Name}'.{(Nearest.To(name, PlanFields.All) is { } near ? $" The nearest is '{near}'." : "")}");
                if (p.Value.ValueKind is JsonValueKind.Object or JsonValueKind.Array)
                    return Said($"'{path}': the field '{p.Name}' holds a list or an object. Write one value, such as \"50 g\".");
                if (p.Value.ValueKind is JsonValueKind.String or JsonValueKind.Number or JsonValueKind.True) fields[name] = p.Value.ToString();
            }
            return true;
        }
        catch (JsonException e)
        {
            return Said($"'{path}' is not JSON that can be read: line {e.LineNumber + 1}. The file holds the plan's fields as one JSON object.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Said($"'{path}' could not be read. Check the name and whether you may read it.");
        }

        bool Said(string sentence)
        {
            channels.Messages.WriteLine(sentence);
            return false;
        }
    }
}
