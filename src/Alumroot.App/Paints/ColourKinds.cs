using Alumroot.Catalogue;
using Alumroot.Paint.Suiting;

namespace Alumroot.App.Paints;

/// <summary>From the chemistry of a dyestuff to the kind of colour that matters to a medium.</summary>
public static class ColourKinds
{
    // The words of the catalogue on the left, the keys of the paint room on the right; null where nothing is known of it in paint.
    private static readonly Dictionary<string, string?> ByChemistry = new(StringComparer.Ordinal)
    {
        ["anthraquinone with neighbouring hydroxyls"] = "anthraquinone-madder",
        ["anthraquinone acid"] = "anthraquinone-insect",
        ["anthraquinone with hydroxyls at 1 and 8"] = "anthraquinone-insect",
        ["anthraquinone of fungi"] = "anthraquinone-insect",
        ["neoflavonoid (brazilein)"] = "redwood",
        ["neoflavonoid (haematein)"] = "redwood",
        ["flavone (luteolin type)"] = "flavonoid",
        ["flavonol (quercetin type)"] = "flavonoid",
        ["flavonol without the 5-hydroxyl (fisetin type)"] = "flavonoid",
        ["chalcone or aurone"] = "flavonoid",
        ["ellagitannin with flavonol"] = "tannin-aluminium",
        ["hydrolysable tannin"] = "tannin-aluminium",
        ["condensed tannin"] = "tannin-aluminium",
        ["anthocyanin"] = "anthocyanin",
        ["3-deoxyanthocyanidin"] = "anthocyanin",
        ["betalain"] = "betalain",
        ["curcuminoid"] = "curcumin",
        ["carotenoid"] = "carotenoid",
        ["indigoid"] = "indigoid",
        ["naphthoquinone"] = "naphthoquinone",
        ["chlorophyll"] = "chlorophyll",
        ["lichen orcein"] = "orcein",
        ["berberine alkaloid"] = "berberine",
        ["xanthone or resin"] = null,
        ["brown polymer"] = null,
        ["styrylpyrone of fungi"] = null,
        ["lichen acid"] = null,
        ["iridoid"] = null,
    };

    /// <summary>Whether the chemistry of a dyestuff was considered here.</summary>
    public static bool Considered(string chemicalClass) => ByChemistry.ContainsKey(chemicalClass);

    /// <summary>The kind of colour; null when nothing is known of it.</summary>
    /// <param name="dyestuff">The dyestuff, or null.</param>
    /// <param name="salt">The metal salt in plain words, or null.</param>
    public static string? Of(Dyestuff? dyestuff, string? salt)
    {
        if (dyestuff is null) return null;
        if (dyestuff.Key == "safflower-red") return "carthamin";
        string? kind = ByChemistry.GetValueOrDefault(dyestuff.ChemicalClass);
        bool iron = Says("iron"), copper = Says("copper");
        return kind switch
        {
            "tannin-aluminium" when iron => "tannin-iron",
            "tannin-aluminium" or "flavonoid" when copper => "copper-lake",
            "flavonoid" when Says("chalk") => "flavonoid-chalk",
            _ => kind,
        };

        bool Says(string word) => salt?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
    }

    /// <summary>A kind by what was typed: its own key, or a dyestuff of the handbook.</summary>
    public static ColourantClass? Read(string typed) => ColourantClass.Find(typed) ?? ColourantClass.Find(Of(CatalogueData.Embedded.FindDyestuff(typed), null));
}
