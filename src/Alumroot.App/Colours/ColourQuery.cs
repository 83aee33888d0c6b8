using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Paint.Recipes;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Colours;

/// <summary>Which colours of the record are wanted and in which order, as it stands in an address; the page and the card to print ask here, so that they cannot differ.</summary>
/// <param name="typed">The fields of the address.</param>
internal sealed class ColourQuery(Func<string, string?> typed)
{
    /// <summary>Names of the fields.</summary>
    internal const string Order = "order", State = "state", Of = "of", Dyestuff = "dyestuff", Salt = "salt", PhBand = "ph", Medium = "medium", Near = "near", Hue = "hue", Strength = "strength", Lightness = "light";

    /// <summary>The word for what the record does not tell.</summary>
    internal const string NotTold = "not-told";

    private static readonly Bands OfPh = new(5, 6, 7, 8), OfChroma = new(10, 30, 50), OfLightness = new(30, 50, 70);

    private static readonly string[] Fields = [Order, State, Of, Dyestuff, Salt, PhBand, Medium, Near, Hue, Strength, Lightness];

    /// <summary>The orders that are offered.</summary>
    internal static IReadOnlyList<(string Key, string Words)> Orders { get; } =
        [("", "latest first"), ("earliest", "earliest first"), ("hue", "by hue"), ("chroma", "strongest first"), ("weakest", "weakest first"), ("lightness", "lightest first"), ("darkest", "darkest first")];

    /// <summary>The bands of pH that are offered; a pH on an edge belongs to the band above it.</summary>
    internal static IReadOnlyList<(string Key, string Words)> PhBands { get; } = [("", "any"), .. OfPh.All, (NotTold, "not told")];

    /// <summary>The bands of chroma that are offered.</summary>
    internal static IReadOnlyList<(string Key, string Words)> Strengths { get; } = [("", "any"), .. OfChroma.All];

    /// <summary>The bands of L* that are offered.</summary>
    internal static IReadOnlyList<(string Key, string Words)> Lightnesses { get; } = [("", "any"), .. OfLightness.All];

    /// <summary>The colour to be near; null when none can be read.</summary>
    internal Lab? Aim => Typed(Near) is { } near ? LabReading.Of(near) : null;

    /// <summary>A field as it was typed; null when it is blank.</summary>
    internal string? Typed(string field) => typed(field)?.Trim() is { Length: > 0 } text ? text : null;

    /// <summary>Why the colour to be near could not be read; null when it could or none is typed.</summary>
    internal string? Trouble => Typed(Near) is { } near && Aim is null ? $"Nearest to: '{near}' is no Lab. Write three numbers, such as 46 23 13." : null;

    /// <summary>Whether anything narrows the colours.</summary>
    internal bool Narrows => Fields.Any(f => f is not (Order or Near) && Typed(f) is not null);

    /// <summary>The same as part of an address, without a question mark.</summary>
    internal string Address => string.Join('&', Fields.Where(f => Typed(f) is not null).Select(f => $"{f}={Uri.EscapeDataString(Typed(f)!)}"));

    /// <summary>What narrows them in words, such as "weld, dry"; empty when nothing does.</summary>
    internal string Words => string.Join(", ", new[]
    {
        Typed(Hue), Typed(Dyestuff), Typed(Salt), Typed(Of), Enum.GetValues<SwatchState>().Where(s => SubjectLine.Word(s) == Typed(State)).Select(SwatchWords.Of).FirstOrDefault(),
        Told("chroma", OfChroma.In(Typed(Strength))), Told("L*", OfLightness.In(Typed(Lightness))), Told("pH", PhBands.Skip(1).FirstOrDefault(b => b.Key == Typed(PhBand)).Words), Typed(Medium) is { } medium ? MediumName(medium) : null,
    }.Where(w => !string.IsNullOrEmpty(w)));

    /// <summary>The colours that are wanted, in order.</summary>
    internal IReadOnlyList<LakeColour> From(IEnumerable<LakeColour> all)
    {
        IEnumerable<LakeColour> shown = all;
        if (Typed(State) is { } state) shown = shown.Where(c => SubjectLine.Word(c.Read.State) == state);
        if (Typed(Of) is { } of) shown = shown.Where(c => $"{c.Subject} {c.Dyestuff} {c.Salt}".Contains(of, StringComparison.OrdinalIgnoreCase));
        if (Typed(Dyestuff) is { } dyestuff) shown = shown.Where(c => Is(c.Dyestuff, dyestuff));
        if (Typed(Salt) is { } salt) shown = shown.Where(c => Is(c.Salt, salt));
        if (Typed(Hue) is { } hue) shown = shown.Where(c => Is(c.HueWord, hue));
        if (Typed(Strength) is { } strength) shown = shown.Where(c => OfChroma.Of(c.Lab.Chroma) == strength);
        if (Typed(Lightness) is { } light) shown = shown.Where(c => OfLightness.Of(c.Lab.L) == light);
        if (Typed(PhBand) is { } band) shown = shown.Where(c => (c.Ph is { } ph ? OfPh.Of(ph.Ph) : NotTold) == band);
        if (Typed(Medium) is { } medium) shown = shown.Where(c => Is(c.Medium ?? "", medium));
        shown = Typed(Order) switch
        {
            "earliest" => shown.OrderBy(c => c.At),
            "hue" => shown.OrderBy(c => c.Lab.HueDegrees),
            "chroma" => shown.OrderByDescending(c => c.Lab.Chroma),
            "weakest" => shown.OrderBy(c => c.Lab.Chroma),
            "lightness" => shown.OrderByDescending(c => c.Lab.L),
            "darkest" => shown.OrderBy(c => c.Lab.L),
            _ => shown.OrderByDescending(c => c.At),
        };
        return [.. Aim is { } aim ? shown.OrderBy(c => Ciede2000.Of(aim, c.Lab).DeltaE) : shown];
    }

    /// <summary>A medium by its key, in words.</summary>
    internal static string MediumName(string key) => key == NotTold ? "no paint" : Alumroot.Paint.Recipes.Medium.Find(key)?.Name ?? key;

    private static bool Is(string told, string wanted) => wanted == NotTold ? told.Length == 0 : string.Equals(told, wanted, StringComparison.OrdinalIgnoreCase);

    private static string? Told(string what, string? words) => words is null ? null : $"{what} {words}";
}
