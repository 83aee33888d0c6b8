using System.Globalization;
using Alumroot.App.Parts;
using Alumroot.App.Print;
using Alumroot.App.Print.Labels;
using Alumroot.Paint.Labels;
using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Requests;

/// <summary>A question for labels: whose, which size, how they stand on the paper. One list of fields for page and PDF.</summary>
public sealed class LabelRequest
{
    /// <summary>Names of the fields.</summary>
    public const string Paint = "paint", Lake = "lake", Trial = "trial", Kind = "kind", Net = "net", PaperField = "paper", Width = "width", Height = "height", MarginLeft = "left", MarginTop = "top", GapAcross = "across", GapDown = "down", Copies = "copies", Skip = "skip", Precautions = "precautions";

    /// <summary>Every field.</summary>
    public static IReadOnlyList<string> Fields { get; } = [Paint, Lake, Trial, Kind, Net, PaperField, Width, Height, MarginLeft, MarginTop, GapAcross, GapDown, Copies, Skip, Precautions];

    /// <summary>The word that leaves the statements of precaution off.</summary>
    public const string Off = "off";

    // Sizes of our own to begin with.
    private static readonly Dictionary<string, (double Width, double Height)> Kinds = new(StringComparer.Ordinal) { ["jar"] = (62, 42), ["tube"] = (75, 28), ["pan"] = (44, 30), ["stick"] = (68, 28) };

    private const int MostCopies = 1000;
    private readonly Func<string, string?> _typed;
    private readonly List<FieldTrouble> _troubles = [];

    /// <summary>Reads the fields.</summary>
    /// <param name="typed">The text of a field, or null.</param>
    /// <param name="store">The record.</param>
    public LabelRequest(Func<string, string?> typed, StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(store);
        _typed = typed;
        IReadOnlyList<LabelContent> contents = Contents(store);
        (double width, double height) = Kinds.GetValueOrDefault(Typed(Kind) ?? "jar", Kinds["jar"]);
        var grid = new LabelGrid(
            Paper.Of(Typed(PaperField)), Millimetres(Width, "Width", width, 15, 210), Millimetres(Height, "Height", height, 10, 290),
            Millimetres(MarginLeft, "Left edge", 10, 0, 100), Millimetres(MarginTop, "Upper edge", 10, 0, 100), Millimetres(GapAcross, "Between, across", 3, 0, 50), Millimetres(GapDown, "Between, down", 3, 0, 50));
        int copies = (int)Millimetres(Copies, "How many", contents.Count > 1 ? 1 : Math.Max(1, grid.Columns * grid.Rows), 1, MostCopies), skip = (int)Millimetres(Skip, "Places used already", 0, 0, 500);
        if (_troubles.Count == 0 && grid.Columns * grid.Rows == 0) _troubles.Add(new(Width, "Width: not one label of this size stands on this paper. Make it smaller, or the edges narrower."));
        if (_troubles.Count == 0 && skip >= grid.Columns * grid.Rows) _troubles.Add(new(Skip, $"Places used already: this paper has only {grid.Columns * grid.Rows}."));
        if (contents.Count == 0 || _troubles.Count > 0) return;
        Asked = contents[0].Precautions;
        if (Typed(Precautions) == Off) contents = [.. contents.Select(c => c with { Precautions = [] })];
        Sheet = new LabelSheet(contents, grid, copies, skip, Outlined: true);
    }

    /// <summary>Kinds of vessels that are offered.</summary>
    public static IReadOnlyList<string> OfferedKinds { get; } = [.. Kinds.Keys];

    /// <summary>The labels; null when nothing is named or something is wrong.</summary>
    public LabelSheet? Sheet { get; }

    /// <summary>Whose labels they are: the number of the record.</summary>
    public string Subject => Typed(Paint) ?? Typed(Lake) ?? Typed(Trial) ?? "";

    /// <summary>The statements of precaution that belong to it, left off or not.</summary>
    public IReadOnlyList<LabelPrecaution> Asked { get; } = [];

    /// <summary>What is wrong.</summary>
    public IReadOnlyList<FieldTrouble> Troubles => _troubles;

    /// <summary>The text of a field; null when it is blank.</summary>
    public string? Typed(string field) => _typed(field) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim()[..Math.Min(text.Trim().Length, 60)] : null;

    /// <summary>What is wrong with a field, or null.</summary>
    public string? Trouble(string field) => _troubles.FirstOrDefault(t => t.FieldId == field)?.Sentence;

    /// <summary>The fields as the query of an address.</summary>
    public string Query => string.Join('&', Fields.Where(f => Typed(f) is not null).Select(f => $"{f}={Uri.EscapeDataString(Typed(f)!)}"));

    private IReadOnlyList<LabelContent> Contents(StudioStore store)
    {
        if (Typed(Paint) is { } paint)
        {
            if (SubjectKey.TryRead(paint) is { Class: SubjectClass.Paint } key && store.Paint(key) is { Made: not null } state) return LabelContent.OfPaint(state, store, Typed(Net)) is { } label ? [label] : [];
            _troubles.Add(new(Paint, $"There is no paint '{paint}'. Paints look like P-07."));
        }
        else if (Typed(Lake) is { } lake)
        {
            if (SubjectKey.TryRead(lake) is { Class: SubjectClass.Batch } key && store.Batch(key) is { } state) return [LabelContent.OfLake(state, store, Typed(Net))];
            _troubles.Add(new(Lake, $"There is no lake '{lake}'. Lakes look like 26-014."));
        }
        else if (Typed(Trial) is { } trial)
        {
            if (SubjectKey.TryRead(trial) is { Class: SubjectClass.Trial } key && store.Trial(key) is { Begun: not null } state) return LabelContent.OfTrial(state);
            _troubles.Add(new(Trial, $"There is no trial '{trial}'. Trials look like T-05."));
        }
        return [];
    }

    private double Millimetres(string field, string label, double usual, double least, double most)
    {
        if (Typed(field) is not { } typed) return usual;
        string text = (typed.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? typed[..^2] : typed).Trim().Replace(',', '.');
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double x) && x >= least && x <= most && (field is not (Copies or Skip) || x == Math.Floor(x))) return x;
        _troubles.Add(new(field, string.Create(CultureInfo.InvariantCulture, $"{label}: '{typed}' does not do. Write a{(field is Copies or Skip ? " whole" : "")} number from {least} to {most}{(field is Copies or Skip ? "" : ", in millimetres")}.")));
        return usual;
    }
}
