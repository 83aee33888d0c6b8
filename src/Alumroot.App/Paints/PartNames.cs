namespace Alumroot.App.Paints;

/// <summary>Which words on a packet name a part of a recipe.</summary>
internal static class PartNames
{
    // What packets say, in lower case; words of the trade, common practice, no source.
    private static readonly (string Part, string[] Words)[] Known =
    [
        ("gum arabic", ["gum arabic", "gum acacia", "gummi arabicum"]),
        ("gum tragacanth", ["tragacanth"]),
        ("glycerine", ["glycerin", "glycerol"]),
        ("honey", ["honey"]),
        ("egg yolk", ["egg"]),
        ("beaten egg white, stood overnight", ["egg"]),
        ("casein", ["casein"]),
        ("borax", ["borax"]),
        ("chalk", ["chalk", "whiting"]),
        ("linseed oil", ["linseed", "flaxseed"]),
        ("alkyd, what stays", ["alkyd"]),
        // An alkyd stands in its tin with its solvent, so both come from the one lot.
        ("its solvent", ["alkyd", "white spirit"]),
        ("beeswax", ["beeswax"]),
        ("damar", ["damar", "dammar"]),
    ];

    /// <summary>Whether a packet names a part.</summary>
    internal static bool Names(string title, string part)
    {
        string[] words = Known.FirstOrDefault(k => string.Equals(k.Part, part, StringComparison.OrdinalIgnoreCase)).Words ?? [part];
        return words.Any(w => title.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Whether a packet names any part at all.</summary>
    internal static bool NamesAny(string title) => Known.Any(k => Names(title, k.Part));

    /// <summary>Whether a packet and a preservative share a word that tells.</summary>
    internal static bool NamesPreservative(string title, string preservative) =>
        title.Contains("preservative", StringComparison.OrdinalIgnoreCase)
        || preservative.Split(' ', '-').Any(w => w.Length > 3 && w is not ("potassium" or "sodium") && title.Contains(w, StringComparison.OrdinalIgnoreCase));
}
