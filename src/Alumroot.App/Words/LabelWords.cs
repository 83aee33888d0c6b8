using System.Globalization;
using Alumroot.App.Print.Labels;
using Alumroot.Catalogue;
using Alumroot.Paint.Labels;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Words;

/// <summary>The words of labels.</summary>
public static class LabelWords
{
    /// <summary>The sentence that goes with every label.</summary>
    public const string Law = "Whoever sells or gives paint away must label it by the local law (such as CLP in the European Union, ASTM D4236 in the United States). What stands here follows from the record only: have it judged by someone licensed to do so.";

    /// <summary>When nothing is known of what a preservative asks for.</summary>
    public static string NotKnown(string preservative) => $"Nothing is known here of the hazards of '{preservative}', so the label says none of them. Take statements, signal word and signs from its data sheet, or do not hand this paint on.";

    /// <summary>On a jar of dry pigment.</summary>
    public const string Dust = "Dry powder: keep the dust out of the air. Not for food or skin.";

    /// <summary>The name of a jar of a trial.</summary>
    public static string Jar(SubjectKey trial, int order) => $"{trial} jar {order}";

    /// <summary>What the pigment is, in plain words, with the generic name of the Colour Index where one exists.</summary>
    public static string Pigment(BatchPlanned? plan, Dyestuff? dyestuff)
    {
        string metal = plan?.Salt is { } salt && salt.Contains("iron", StringComparison.OrdinalIgnoreCase) ? "iron" : plan?.Salt is { } other && other.Contains("copper", StringComparison.OrdinalIgnoreCase) ? "copper" : "aluminium";
        string what = plan?.Dyestuff is { } name ? $"{name} ({dyestuff?.Species ?? "plant dye"}) on {metal} hydroxide" : $"{metal} hydroxide, white";
        string index = dyestuff is { ColourIndexName.Length: > 0 } ? $", colourant {dyestuff.ColourIndexName}" : "";
        return $"Pigment: natural lake of {what}{index}.";
    }

    /// <summary>What binds it.</summary>
    public static string Binder(string medium, IEnumerable<string> parts) => $"{char.ToUpperInvariant(medium[0])}{medium[1..]}: {string.Join(", ", parts)}.";

    /// <summary>What keeps it.</summary>
    public static string Preservative(string name) => $"Preservative: {name}.";

    /// <summary>How much is in one vessel; empty when it is not known.</summary>
    public static string Net(string amount) => amount.Length > 0 ? $"Content {amount}." : "";

    /// <summary>The statements of hazard, after the gravest signal word.</summary>
    public static string Hazards(IReadOnlyList<LabelHazard> hazards)
    {
        ArgumentNullException.ThrowIfNull(hazards);
        string signal = SignalWord(hazards);
        return $"{(signal.Length > 0 ? $"{signal}. " : "")}{string.Join(' ', hazards.Select(h => h.Pictogram.Length > 0 ? $"{h.Statement} ({h.Code}, {h.Pictogram})" : $"{h.Statement} ({h.Code})"))}";
    }

    /// <summary>The statements of precaution, one after the other.</summary>
    public static string Precautions(IEnumerable<LabelPrecaution> precautions) => string.Join(' ', precautions.Select(p => p.Statement));

    /// <summary>Who made it and where to ask; empty when it is not told.</summary>
    public static string Maker(StudioSet ways)
    {
        ArgumentNullException.ThrowIfNull(ways);
        string who = string.Join(", ", new[] { ways.Maker, ways.MakerAddress }.OfType<string>());
        return who.Length == 0 ? "" : $"Made by {who}{(who.EndsWith('.') ? "" : ".")}";
    }

    /// <summary>When address and telephone are missing where there are hazards; null when they are there.</summary>
    public static string? NoAddress(StudioSet ways)
    {
        ArgumentNullException.ThrowIfNull(ways);
        string missing = string.Join(", ", new[] { ways.Maker is null ? "name" : "", ways.MakerAddress is null ? "address and telephone" : "" }.Where(t => t.Length > 0));
        return missing.Length == 0 ? null : $"The maker's {missing} {(missing == "name" ? "is" : "are")} not on the label; the European rules ask for name, address and telephone beside hazards.";
    }

    /// <summary>When a label with hazards is smaller than the rules ask; null when it is not.</summary>
    /// <param name="size">What is asked.</param>
    /// <param name="widthMillimetres">The label's width.</param>
    /// <param name="heightMillimetres">Its height.</param>
    public static string? TooSmall(LabelSize size, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(size);
        return size.IsKeptBy(widthMillimetres, heightMillimetres) ? null : string.Create(CultureInfo.InvariantCulture,
            $"For a package of up to {size.ToMillilitres / 1000:0.#} L the European rules ask for a label of {(size.IsAskedOutright ? "" : "if possible ")}{size.ShortMillimetres:0} by {size.LongMillimetres:0} mm (CLP, Annex I, 1.2.1.4); this one is {widthMillimetres:0.#} by {heightMillimetres:0.#} mm.");
    }

    /// <summary>When letters are smaller than what counts as readable; null when they are not.</summary>
    /// <param name="points">The size of the smallest letters.</param>
    public static string? LettersTooSmall(double points) => points >= LabelLayout.ReadablePoints ? null
        : string.Create(CultureInfo.InvariantCulture, $"Its smallest letters have {points:0.##} points; {LabelLayout.ReadablePoints:0} points, an x of 1.2 mm, count as the least that can be read.");

    /// <summary>When signs are smaller than the rules ask or would like; null when they are not.</summary>
    /// <param name="size">What is asked.</param>
    /// <param name="sideMillimetres">The side of a sign's red square.</param>
    public static string? SignTooSmall(LabelSize size, double sideMillimetres)
    {
        ArgumentNullException.ThrowIfNull(size);
        return sideMillimetres < size.SignLeastMillimetres - 0.05 ? string.Create(CultureInfo.InvariantCulture, $"Its signs have a side of {sideMillimetres:0.#} mm, and {size.SignLeastMillimetres:0} mm is the least for such a package: paste larger ones beside it.")
            : sideMillimetres < size.SignWantedMillimetres - 0.05 ? string.Create(CultureInfo.InvariantCulture, $"Its signs have a side of {sideMillimetres:0.#} mm: the least that is allowed. The rules ask for {size.SignWantedMillimetres:0} mm if possible.")
            : null;
    }

    /// <summary>Danger or Warning, the graver; empty when no statement asks for one.</summary>
    public static string SignalWord(IReadOnlyList<LabelHazard> hazards) => hazards.Any(h => h.SignalWord == "Danger") ? "Danger" : hazards.Select(h => h.SignalWord).FirstOrDefault(w => w.Length > 0) ?? "";

    /// <summary>Lot and day.</summary>
    public static string Lot(SubjectKey key, IEnumerable<string> lakes, DateTimeOffset at)
    {
        string of = string.Join(", ", lakes);
        return $"Lot {key}{(of.Length > 0 ? $" of {of}" : "")}, {at.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}.";
    }
}
