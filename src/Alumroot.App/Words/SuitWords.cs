using System.Globalization;
using Alumroot.Paint.Suiting;

namespace Alumroot.App.Words;

/// <summary>Why a medium bears a kind of colour well or ill.</summary>
public static class SuitWords
{
    private static readonly Dictionary<string, string> Effects = new(StringComparer.Ordinal)
    {
        ["thin-wash"] = "Thin washes fade soonest: paint a strip, cover half, put it in a window before you sell or give it.",
        ["fugitive"] = "It fades fast in any medium, fastest in thin washes: for study, closed books, or with a warning to whoever gets it.",
        ["bleeds-wet"] = "Some of the colour stays soluble and bleeds when it is wetted again: wash the lake until the water is clear.",
        ["soap"] = "Its colour dissolves as a soap in an alkaline medium.",
        ["copper-ammonia"] = "Copper dissolves in ammonia with a blue of its own: no ammonia to make the medium.",
        ["chalk-acid-gum"] = "Chalk fizzes slowly with an acid gum: a fresh, neutral gum, and no vinegar near it.",
        ["no-film"] = "A stick leaves no film: the drawing dusts, so fix it or put it behind glass.",
        ["slow-drier"] = "It dries slowly in oil: a well washed lake, thin layers, an oil prepared to dry faster. Of driers the least that works, and no boiled oil; old sources disagree, so try each lot.",
        ["quinone-slows"] = "Quinones hold up the drying of oil: thin layers, and a trial stroke first.",
        ["tannin-slows"] = "Tannin holds up the drying of oil: thin layers, and a trial stroke first.",
        ["iron-disturbs"] = "Iron and tannin disturb the drying: it may skin over fast and stay soft below.",
        ["copper-ages"] = "Copper makes oil age sooner.",
        ["little-record"] = "There is little record of it in oil: try drying and bleeding first.",
        ["dissolves-in-oil"] = "The colour itself dissolves in oil and fat, bleeds, and comes through the next coat.",
        ["bleached-by-oil"] = "Drying oil bleaches it.",
        ["fat-over-lean"] = "Fat over lean: each coat has at least as much oil for its pigment as the one below.",
        ["transparent"] = "A lake is almost transparent here: a glaze over white or light paint; to hide, it needs another pigment with it.",
        ["never-lime"] = "Never with lime: near pH 12 the ground of the lake itself dissolves and most colours are lost.",
        ["alkaline-ground"] = "Alkaline grounds and papers (lime, chalk, silicate) turn it or let it fade sooner: try it on the ground you mean.",
        ["no-vinegar"] = "No vinegar in the egg: it dissolves chalk and turns the colour.",
    };

    private static readonly Dictionary<string, string> Above = new(StringComparer.Ordinal)
    {
        ["bluer"] = "it turns bluer and stays",
        ["violet-dissolves"] = "it turns violet, then dissolves",
        ["deeper-dissolves"] = "the yellow deepens, browns and partly dissolves",
        ["deeper"] = "the yellow deepens",
        ["purple-dissolves"] = "it turns purple to blue and dissolves",
        ["blue-green-gone"] = "it turns blue, green, then yellow and is gone",
        ["destroyed"] = "it is destroyed",
        ["red-brown-destroyed"] = "it turns red-brown, then goes",
        ["little"] = "little changes",
        ["keeps"] = "it keeps",
        ["browns"] = "it browns",
        ["darkens"] = "it darkens in the air",
        ["violet"] = "it turns from red to violet",
        ["paler"] = "it grows paler",
        ["olive"] = "it turns olive to brown",
    };

    /// <summary>Keys that have words.</summary>
    public static IEnumerable<string> Known => Effects.Keys.Concat(Above.Keys);

    /// <summary>A reason in a sentence or two.</summary>
    public static string Of(SuitReason reason, Suitability suits)
    {
        ArgumentNullException.ThrowIfNull(reason);
        ArgumentNullException.ThrowIfNull(suits);
        ColourantClass c = suits.Colour;
        return reason.Key switch
        {
            "ph-above" => $"Its wet film stands at pH {Ph(suits.Medium.FilmPhLow)} to {Ph(suits.Medium.FilmPhHigh)}; this colour keeps to about {Ph(c.PhHigh)}. Above, {Above[c.Above]}.",
            "ph-may-pass" => $"Its wet film may reach pH {Ph(suits.Medium.FilmPhHigh)}; this colour keeps to about {Ph(c.PhHigh)}. Above, {Above[c.Above]}: try a drop first.",
            "ph-below" => $"Its wet film may fall to pH {Ph(suits.Medium.FilmPhLow)}; below about {Ph(c.PhLow)} the hue shifts: try a drop first.",
            "heat" => $"Wax is worked near {Ph(Suitability.WaxWorkedCelsius)} °C; this colour stands about {Ph(c.HeatCelsius)} °C.",
            "near-heat" => $"Wax at {Ph(Suitability.WaxWorkedCelsius)} °C is near the limit of this colour, about {Ph(c.HeatCelsius)} °C: as cool and short as it goes.",
            _ => Effects[reason.Key],
        };
    }

    private static string Ph(double? value) => value!.Value.ToString("0.#", CultureInfo.InvariantCulture);
}
