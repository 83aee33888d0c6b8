using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.App.Words;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Paint.Recipes;

namespace Alumroot.App.Paints;

/// <summary>The tints of a pastel with the colours to expect.</summary>
/// <param name="Tints">The colours, full colour first; empty when nothing tells them.</param>
/// <param name="Basis">What they were reckoned from, or what would tell them, as a sentence.</param>
/// <param name="Better">What would tell them better; null when nothing simple would.</param>
public sealed record TintAnswer(IReadOnlyList<ExpectedTint> Tints, string Basis, string? Better);

/// <summary>Reads what is known of a pigment's colour for its tints with chalk.</summary>
public static class TintReading
{
    /// <summary>Names of the fields.</summary>
    public const string Full = "full-colour", Tint = "tint", TintShare = "tint-share", OverBlack = "over-black", OverWhite = "over-white", Black = "bare-black", White = "bare-white", Coverage = "coverage", Chalk = "chalk";

    /// <summary>The field that takes a coat of the record in place of what is typed.</summary>
    public const string Kept = "kept-coat";

    /// <summary>The medium whose tints are made with chalk.</summary>
    public const string Medium = "soft-pastel";

    // A colour of the record that nothing bounds is taken to be so far off; our judgement, no source.
    private const double UnboundedUnits = 4;

    /// <summary>Every field that is typed.</summary>
    public static IReadOnlyList<string> Fields { get; } = [Full, Tint, TintShare, OverBlack, OverWhite, Black, White, Coverage, Chalk];

    /// <summary>Reads the fields; null when one of them is wrong.</summary>
    /// <param name="typed">The text of a field, or null.</param>
    /// <param name="say">Takes the field and the sentence of what is wrong.</param>
    /// <param name="lake">The lake, whose own colour stands in for one that is not typed.</param>
    public static TintAnswer? Read(Func<string, string?> typed, Action<string, string> say, PaintLake? lake)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(say);
        bool wrong = false;
        KeptDrawdown? kept = typed(Kept) is { } key ? lake?.Drawdowns.FirstOrDefault(d => d.Key == key) : null;
        if (typed(Kept) is not null && kept is null) Wrong(Kept, $"{PaintFields.Label(Kept)}: this lake has no such coat over a black and a white card. Choose one of the list, or none.");
        Lab? full = Colour(Full), tint = Colour(Tint), overBlack = Colour(OverBlack), overWhite = Colour(OverWhite), black = Colour(Black), white = Colour(White), chalk = Colour(Chalk);
        double? share = Number(TintShare, 0, 100, "a share of pigment in percent, such as 12.5"), coverage = Number(Coverage, 0, 10_000, "grams on a square metre, such as 20");
        // What is typed goes before what is kept.
        if (kept is not null)
        {
            overBlack ??= kept.OverBlack.Lab;
            overWhite ??= kept.OverWhite.Lab;
            black ??= kept.Black;
            white ??= kept.White;
        }
        if (overBlack is not null || overWhite is not null)
            foreach ((string field, Lab? read) in new[] { (OverBlack, overBlack), (OverWhite, overWhite), (Black, black), (White, white) })
                if (read is null && typed(field) is null) Wrong(field, MatchWords.NoLab(PaintFields.Label(field), null));
        if (tint is not null && share is null && typed(TintShare) is null) Wrong(TintShare, $"{PaintFields.Label(TintShare)}: write how much of the tint's powder is pigment, in percent, such as 12.5.");
        LakeColour? own = full is null ? lake?.Powder : null;
        full ??= own?.Lab;
        if (tint is not null && full is null) Wrong(Full, $"{PaintFields.Label(Full)}: a tint tells more only together with the full colour. {MatchWords.NoLab(PaintFields.Label(Full), null)}");
        if (wrong) return null;
        WhitePowder powder = chalk is { } measured ? WhitePowder.Chalk with { Colour = measured } : WhitePowder.Chalk;
        TintBasis? basis = (full, tint, share, overBlack) switch
        {
            ({ } f, { } t, { } c, _) => new TintBasis.FullAndTint(f, t, c / 100),
            (_, _, _, { } over) => new TintBasis.Drawn(new ColourDrawdown(over, black!.Value, overWhite!.Value, white!.Value), coverage),
            ({ } f, _, _, _) => new TintBasis.Full(f),
            _ => null,
        };
        if (basis is null) return new TintAnswer([], TintWords.NothingKnown, null);
        double within = kept is not null && basis is TintBasis.Drawn ? kept.WithinDeltaE2000 : own is null ? LabReading.InstrumentUnits : own.Read.WithinDeltaE2000 ?? UnboundedUnits;
        var row = new TintRow(basis, powder, within);
        return new TintAnswer(row.Colours([.. PastelSeries.Tints(1).Select(t => t.PigmentFraction)]), TintWords.Of(basis, row, own, kept, chalk is null), TintWords.Better(basis, row));

        void Wrong(string field, string sentence)
        {
            wrong = true;
            say(field, sentence);
        }

        Lab? Colour(string field)
        {
            if (typed(field) is not { } text) return null;
            if (LabReading.Of(text) is { } lab) return lab;
            Wrong(field, MatchWords.NoLab(PaintFields.Label(field), text));
            return null;
        }

        double? Number(string field, double above, double below, string what)
        {
            if (typed(field) is not { } text) return null;
            string digits = text.Replace("g/m²", "", StringComparison.OrdinalIgnoreCase).Replace("%", "", StringComparison.Ordinal).Trim().Replace(',', '.');
            if (double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double x) && x > above && x < below) return x;
            Wrong(field, string.Create(CultureInfo.InvariantCulture, $"{PaintFields.Label(field)}: '{text}' does not do. Write {what}."));
            return null;
        }
    }
}
