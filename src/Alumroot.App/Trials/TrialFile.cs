using System.Globalization;
using System.Text.Json;
using Alumroot.App.Requests;
using Alumroot.Trials.Design;

namespace Alumroot.App.Trials;

/// <summary>A trial as it is asked for in a JSON file: factors, kind, jars, and the plan that all jars share.</summary>
/// <param name="Request">What is to be designed.</param>
/// <param name="Plan">The fields that all jars share; null when no amounts are wanted.</param>
public sealed record TrialFile(TrialRequest Request, PlanRequest? Plan)
{
    private const int MostSteps = 12;
    private static readonly string[] Known = ["kind", "factors", "jars", "replicates", "blocks", "interactions", "seed", "forbidden", "plan", "about"];

    /// <summary>Reads the text; a sentence that says what is wrong instead.</summary>
    public static (TrialFile? File, string? Trouble) Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            using JsonDocument document = JsonDocument.Parse(text, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            return Read(document.RootElement);
        }
        catch (JsonException e)
        {
            return (null, $"The file is no JSON: line {e.LineNumber + 1} is not understood. It begins with {{ and holds \"kind\" and \"factors\".");
        }
    }

    private static (TrialFile?, string?) Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("factors", out JsonElement factors) || factors.ValueKind != JsonValueKind.Array)
            return (null, "\"factors\" is missing. It is a list, such as [ {\"name\": \"salt\", \"levels\": [\"potash-alum\", \"aluminium-acetate\"]} ].");
        if (root.EnumerateObject().Select(p => p.Name).FirstOrDefault(n => !Known.Contains(n)) is { } other) return (null, $"\"{other}\" is not known. The names are {string.Join(", ", Known)}.");
        var read = new List<Factor>();
        foreach (JsonElement element in factors.EnumerateArray())
        {
            (Factor? factor, string? trouble) = ReadFactor(element, read.Count + 1);
            if (factor is null) return (null, trouble);
            if (read.Any(f => f.Name == factor.Name)) return (null, $"Factor \"{factor.Name}\" stands twice. Give each its own name.");
            read.Add(factor);
        }
        TrialKind? kind = (root.TryGetProperty("kind", out JsonElement k) ? k.ToString() : "full") switch { "full" => TrialKind.Full, "fraction" => TrialKind.Fraction, "latin-square" => TrialKind.LatinSquare, "best" => TrialKind.Best, _ => null };
        if (kind is null) return (null, $"\"kind\": '{k}' is not known. It is full, fraction, latin-square or best.");
        (List<ForbiddenPair>? forbidden, string? wrong) = ReadForbidden(root, read);
        if (forbidden is null) return (null, wrong);
        string? number = null;
        int Whole(string name, int otherwise)
        {
            if (!root.TryGetProperty(name, out JsonElement value)) return otherwise;
            if (value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out int n) && n is >= 1 and <= 100_000) return n;
            number ??= $"\"{name}\": {value} is not a whole number from 1 up.";
            return otherwise;
        }
        var request = new TrialRequest(read, kind.Value)
        {
            Jars = root.TryGetProperty("jars", out _) ? Whole("jars", 1) : null,
            Replicates = Whole("replicates", 1),
            Blocks = Whole("blocks", 1),
            Seed = (ulong)Whole("seed", 1),
            Interactions = !root.TryGetProperty("interactions", out JsonElement i) || i.ValueKind != JsonValueKind.False,
            Forbidden = forbidden,
        };
        if (number is not null) return (null, number);
        if (!root.TryGetProperty("plan", out JsonElement plan)) return (new TrialFile(request, null), null);
        if (plan.ValueKind != JsonValueKind.Object) return (null, "\"plan\" holds the fields of a plan, such as {\"dyestuff\": \"madder\", \"dry\": \"5 g\", \"water\": \"150 mL\"}.");
        return plan.EnumerateObject().Select(p => p.Name).FirstOrDefault(n => !PlanFields.All.Contains(n)) is { } stranger
            ? (null, $"\"plan\": '{stranger}' is no field of a plan. The names are those of 'alumroot plan', without the dashes.")
            : (new TrialFile(request, PlanRequest.From(name => plan.TryGetProperty(name, out JsonElement v) ? v.ToString() : null)), null);
    }

    private static (Factor?, string?) ReadFactor(JsonElement element, int place)
    {
        if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty("name", out JsonElement named) || named.ToString() is not { Length: > 0 } name) return (null, $"Factor {place} has no \"name\". Write what is set, such as \"salt\" or \"to-ph\".");
        string unit = element.TryGetProperty("unit", out JsonElement u) ? u.ToString() : "";
        if (element.TryGetProperty("levels", out JsonElement levels))
        {
            string[] all = levels.ValueKind == JsonValueKind.Array ? [.. levels.EnumerateArray().Select(l => l.ToString().Trim())] : [];
            if (all.Length < 2 || all.Distinct(StringComparer.Ordinal).Count() < all.Length || all.Any(l => l.Length == 0)) return (null, $"Factor \"{name}\": \"levels\" is a list of two or more different settings.");
            // Settings that are all numbers lie along a range.
            return levels.EnumerateArray().All(l => l.ValueKind == JsonValueKind.Number) ? (new Factor.Measured(name, [.. levels.EnumerateArray().Select(l => l.GetDouble()).Order()], unit), null) : (new Factor.Named(name, all), null);
        }
        if (!element.TryGetProperty("from", out JsonElement from) || !element.TryGetProperty("to", out JsonElement to)) return (null, $"Factor \"{name}\" needs \"levels\", or \"from\" and \"to\".");
        if (from.ValueKind != JsonValueKind.Number || to.ValueKind != JsonValueKind.Number || !(to.GetDouble() > from.GetDouble())) return (null, $"Factor \"{name}\": \"from\" and \"to\" are numbers, the smaller first; the unit stands in \"unit\".");
        int steps = element.TryGetProperty("steps", out JsonElement s) ? s.ValueKind == JsonValueKind.Number && s.TryGetInt32(out int n) ? n : 0 : 2;
        if (steps is < 2 or > MostSteps) return (null, $"Factor \"{name}\": \"steps\" is how many settings are used, 2 to {MostSteps}.");
        (double low, double high) = (from.GetDouble(), to.GetDouble());
        return (new Factor.Measured(name, [.. Enumerable.Range(0, steps).Select(i => Math.Round(low + (high - low) * i / (steps - 1), 10))], unit), null);
    }

    private static (List<ForbiddenPair>?, string?) ReadForbidden(JsonElement root, List<Factor> factors)
    {
        var pairs = new List<ForbiddenPair>();
        if (!root.TryGetProperty("forbidden", out JsonElement all)) return (pairs, null);
        foreach (JsonElement element in all.ValueKind == JsonValueKind.Array ? all.EnumerateArray() : [])
        {
            (int Factor, int Level)[] settings = element.ValueKind == JsonValueKind.Object
                ? [.. element.EnumerateObject().Select(p => factors.FindIndex(f => f.Name == p.Name) is var at && at >= 0 ? (at, LevelOf(factors[at], p.Value.ToString())) : (-1, -1))]
                : [];
            if (settings.Length != 2 || settings.Any(s => s.Factor < 0 || s.Level < 0)) return (null, $"\"forbidden\": {element} is not two settings of factors above, such as {{\"salt\": \"iron-sulfate\", \"alkali\": \"potash\"}}.");
            pairs.Add(new ForbiddenPair(settings[0].Factor, settings[0].Level, settings[1].Factor, settings[1].Level));
        }
        return (pairs, null);
    }

    private static int LevelOf(Factor factor, string setting) =>
        Enumerable.Range(0, factor.LevelCount).Where(l => factor.Setting(l) == setting || (factor is Factor.Measured m && double.TryParse(setting, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && x == m.Values[l])).DefaultIfEmpty(-1).First();
}
