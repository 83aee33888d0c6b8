using System.Text.Json;
using Alumroot.App.Verbs;
using Alumroot.Colour.Photograph;

namespace Alumroot.App.Photographs;

/// <summary>Reads the request of <c>measure</c>: a JSON object with the picture, the target and the things to measure.</summary>
internal sealed class MeasureFile
{
    private const int MostSwatches = 500;
    private const long LargestBytes = 4 << 20;

    private static readonly string[] Known = ["photo", "target", "card_px", "card_reflectance", "swatches"], KnownTarget = ["reference", "corners_px", "layout"], KnownLayout = ["columns", "rows", "margin", "patch", "gap"], KnownSwatch = ["id", "corners_px"];

    private readonly string _name;
    private readonly string _folder;

    private MeasureFile(string name, string folder) => (_name, _folder) = (name, folder);

    /// <summary>The request of a file, or the sentence that says what is wrong with it.</summary>
    internal static (MeasureRequest? Request, string? Mistake) Read(string path)
    {
        string name = Path.GetFileName(path);
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > LargestBytes }) return (null, $"{name} is larger than {LargestBytes >> 20} MiB, which no request needs.");
            using JsonDocument document = JsonDocument.Parse(File.ReadAllText(path));
            return (new MeasureFile(name, Path.GetDirectoryName(Path.GetFullPath(path))!).Whole(document.RootElement), null);
        }
        catch (MistakeException e)
        {
            return (null, e.Message);
        }
        catch (JsonException e)
        {
            return (null, $"{name} is not JSON that can be read: line {e.LineNumber + 1}. It holds the picture, the target and the swatches as one JSON object; 'alumroot measure --help' shows one.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return (null, $"'{path}' could not be read. Check the name and whether you may read it.");
        }
    }

    private MeasureRequest Whole(JsonElement root)
    {
        Object(root, "the request", Known);
        string photo = FilePath(Needed(root, "photo", "the request"), "photo");
        Quad? card = root.TryGetProperty("card_px", out JsonElement c) && c.ValueKind is not JsonValueKind.Null ? Corners(c, "card_px") : null;
        double? reflectance = root.TryGetProperty("card_reflectance", out JsonElement r) && r.ValueKind is not JsonValueKind.Null ? Number(r, "card_reflectance") : null;
        if (reflectance is not (null or (> 0 and <= 1))) throw Wrong("card_reflectance is a share of light, above 0 and at most 1, such as 0.88");
        (string? reference, Quad? corners, TargetGrid? grid) = root.TryGetProperty("target", out JsonElement t) && t.ValueKind is not JsonValueKind.Null ? Target(t) : default;
        return new MeasureRequest(photo, reference, corners, grid, card, reflectance, Swatches(Needed(root, "swatches", "the request")));
    }

    private (string Reference, Quad? Corners, TargetGrid? Grid) Target(JsonElement target)
    {
        Object(target, "target", KnownTarget);
        string reference = FilePath(Needed(target, "reference", "target"), "target.reference");
        Quad? corners = null;
        if (target.TryGetProperty("corners_px", out JsonElement c) && c.ValueKind is not JsonValueKind.Null)
        {
            if (c.ValueKind == JsonValueKind.String && c.GetString() != "find") throw Wrong($"target.corners_px is '{c.GetString()}'. Write four corners, or \"find\" to have the target looked for");
            if (c.ValueKind != JsonValueKind.String) corners = Corners(c, "target.corners_px");
        }
        return (reference, corners, target.TryGetProperty("layout", out JsonElement l) && l.ValueKind is not JsonValueKind.Null ? Grid(l) : null);
    }

    private TargetGrid Grid(JsonElement layout)
    {
        Object(layout, "target.layout", KnownLayout);
        double columns = Number(Needed(layout, "columns", "target.layout"), "target.layout.columns"), rows = Number(Needed(layout, "rows", "target.layout"), "target.layout.rows");
        double margin = Number(Needed(layout, "margin", "target.layout"), "target.layout.margin"), patch = Number(Needed(layout, "patch", "target.layout"), "target.layout.patch"), gap = Number(Needed(layout, "gap", "target.layout"), "target.layout.gap");
        if (columns is not (>= 1 and <= 60) || rows is not (>= 1 and <= 60) || columns != Math.Floor(columns) || rows != Math.Floor(rows)) throw Wrong("target.layout.columns and rows are whole numbers from 1 to 60");
        if (margin < 0 || gap < 0 || patch <= 0) throw Wrong("target.layout.margin, patch and gap are shares of the target's width, none below 0 and the patch above it");
        double used = 2 * margin + columns * patch + (columns - 1) * gap;
        if (used is < 0.9 or > 1.1) throw Wrong($"target.layout does not fill the target: two margins, {columns} patches and {columns - 1} gaps add to {used:0.###} of its width, not to 1");
        return new TargetGrid((int)columns, (int)rows, margin, patch, gap);
    }

    private List<PhotoSwatch> Swatches(JsonElement list)
    {
        if (list.ValueKind != JsonValueKind.Array) throw Wrong("swatches is a list of objects with id and corners_px");
        if (list.GetArrayLength() is 0 or > MostSwatches) throw Wrong(list.GetArrayLength() == 0 ? "swatches is empty, so there is nothing to measure" : $"swatches names {list.GetArrayLength()} things; at most {MostSwatches} are measured at once");
        var found = new List<PhotoSwatch>();
        foreach (JsonElement s in list.EnumerateArray())
        {
            string place = $"swatches[{found.Count}]";
            Object(s, place, KnownSwatch);
            JsonElement id = Needed(s, "id", place);
            if (id.ValueKind is not (JsonValueKind.String or JsonValueKind.Number) || id.ToString().Length == 0) throw Wrong($"{place}.id is a name, such as \"S1\"");
            if (found.Exists(f => f.Id == id.ToString())) throw Wrong($"{place}.id '{id}' stands twice. Give each swatch a name of its own");
            found.Add(new PhotoSwatch(id.ToString(), Corners(Needed(s, "corners_px", place), $"{place}.corners_px")));
        }
        return found;
    }

    private Quad Corners(JsonElement list, string field)
    {
        if (list.ValueKind != JsonValueKind.Array || list.GetArrayLength() != 4) throw Wrong($"{field} is a list of four corners, each [x, y] in pixels: top left, top right, bottom right, bottom left");
        PixelPoint[] c = [.. list.EnumerateArray().Select((p, i) =>
            p.ValueKind == JsonValueKind.Array && p.GetArrayLength() == 2 ? new PixelPoint(Number(p[0], $"{field}[{i}]"), Number(p[1], $"{field}[{i}]")) : throw Wrong($"{field}[{i}] is one corner, [x, y] in pixels"))];
        var quad = new Quad(c[0], c[1], c[2], c[3]);
        return quad.IsConvex ? quad : throw Wrong($"{field}: the four corners cross over or lie on one line. Go round in order: top left, top right, bottom right, bottom left");
    }

    private double Number(JsonElement value, string field)
    {
        if (value.ValueKind != JsonValueKind.Number) throw Wrong($"{field} is '{value}', not a number. Numbers in files have a point, and stand without quotes");
        double number = value.GetDouble();
        return double.IsFinite(number) ? number : throw Wrong($"{field} is too large");
    }

    private string FilePath(JsonElement value, string field) =>
        value.ValueKind == JsonValueKind.String && value.GetString() is { Length: > 0 } path ? Path.Combine(_folder, path) : throw Wrong($"{field} is the path of a file, beside the request or from the root");

    private JsonElement Needed(JsonElement parent, string field, string where) =>
        parent.TryGetProperty(field, out JsonElement value) && value.ValueKind != JsonValueKind.Null ? value : throw Wrong($"{where} has no '{field}', and needs one");

    private void Object(JsonElement value, string where, string[] known)
    {
        if (value.ValueKind != JsonValueKind.Object) throw Wrong($"{where} is an object with the fields {string.Join(", ", known)}");
        foreach (JsonProperty p in value.EnumerateObject())
            if (!known.Contains(p.Name, StringComparer.Ordinal)) throw Wrong($"{where} has a field '{p.Name}' that is not known.{(Nearest.To(p.Name, known) is { } near ? $" The nearest is '{near}'" : $" It may have {string.Join(", ", known)}")}");
    }

    private MistakeException Wrong(string sentence) => new($"{_name}: {sentence}.");

    private sealed class MistakeException(string sentence) : Exception(sentence);
}
