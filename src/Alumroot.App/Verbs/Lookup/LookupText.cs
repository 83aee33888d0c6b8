using System.Text;
using Alumroot.App.Output;
using Alumroot.App.Words;
using Alumroot.Catalogue;

namespace Alumroot.App.Verbs.Lookup;

/// <summary>The answers of <c>lookup</c> as plain columns for people.</summary>
internal static class LookupText
{
    private const int LabelWidth = 18;

    /// <summary>All that is known of a dyestuff.</summary>
    public static string Of(Dyestuff d)
    {
        var text = new StringBuilder().AppendLine($"{d.Name} ({string.Join(", ", new[] { d.Species, d.Part }.Where(t => t.Length > 0))})");
        if (d.Stance == Stance.Refused) Row(text, "Will not plan", Refusal(d.RefusalReason, d.UseInstead));
        else Row(text, "Do", $"{CatalogueWords.Sentence(d.WillTake(LakeMetal.Aluminium))} {CatalogueWords.AsSentence(CatalogueWords.OrNotKnown(d.Extraction))}");
        foreach (LakingVerdict verdict in d.Laking)
            Row(text, "On " + CatalogueWords.Of(verdict.Metal), $"{CatalogueWords.Short(d.WillTake(verdict.Metal).Answer)}; hue {CatalogueWords.OrNotKnown(verdict.Hue)}");
        Row(text, "Why", CatalogueWords.AsSentence(d.LakingReason));
        Row(text, "Class", CatalogueWords.OrNotKnown(d.ChemicalClass));
        Row(text, "Grips by", CatalogueWords.OrNotKnown(d.ChelatingGroup));
        Row(text, "Content", d.ContentPercentOfDry is { } content ? $"{CatalogueWords.Range(content, "%")} {d.ContentOf}" : CatalogueWords.NotKnown);
        Row(text, "With pH", CatalogueWords.AsSentence(CatalogueWords.OrNotKnown(d.PhBehaviour)));
        Row(text, "Permanence", CatalogueWords.OrNotKnown(d.Lightfastness));
        if (d.HazardNote.Length > 0) Row(text, "Mind", CatalogueWords.AsSentence(d.HazardNote));
        Row(text, "Source", Spelt(d.Citation));
        return text.ToString();
    }

    /// <summary>All that is known of a salt, alkali or acid; no amounts for a refused one.</summary>
    public static string Of(Reagent r)
    {
        var text = new StringBuilder().AppendLine(r.Formula.Length > 0 ? $"{r.Name} ({r.Formula})" : r.Name);
        if (r.Stance == Stance.Refused) Row(text, "Will not plan", Refusal(r.RefusalReason, r.UseInstead));
        if (r.WhichOne.Length > 0) Row(text, "Which one", CatalogueWords.AsSentence(r.WhichOne));
        if (r.Note.Length > 0) Row(text, "Note", CatalogueWords.AsSentence(r.Note));
        if (r.MolarMassGramsPerMole is { } mass) Row(text, "Mass of a mole", $"{CatalogueWords.Number(mass)} g/mol");
        if (r.PurityPercent is { } purity) Row(text, "Usual purity", CatalogueWords.Range(purity, "%"));
        if (r.Solubility is { } curve)
            Row(text, "Dissolves", "as sold, g for 100 g of water: " + string.Join(", ", curve.Points.Select(p =>
                $"{(r.SolubilityGramsPer100GramsWater(p.TemperatureCelsius) is { } g && double.IsFinite(g) ? CatalogueWords.Number(g) : "any amount")} at {CatalogueWords.Number(p.TemperatureCelsius)} °C")));
        foreach (Hazard hazard in CatalogueData.Embedded.HazardsOf(r.Key))
            Row(text, "Mind", $"{CatalogueWords.AsSentence(hazard.Note)} {CatalogueWords.AsSentence(hazard.Protection)}");
        Row(text, "Source", Spelt(r.Citation));
        return text.ToString();
    }

    /// <summary>A list of what was found.</summary>
    public static string Of(IReadOnlyList<HitCard> hits)
    {
        var text = new StringBuilder();
        foreach (IGrouping<Catalogue.Finding.FoundKind, HitCard> kind in hits.GroupBy(h => h.Kind))
        {
            text.AppendLine(CatalogueWords.Of(kind.Key));
            foreach (HitCard hit in kind)
                text.AppendLine(Columns.Beside("  " + hit.Key, hit.Title, 30));
        }
        return text.ToString();
    }

    private static void Row(StringBuilder text, string label, string words) => text.AppendLine(Columns.Beside(label, words, LabelWidth));

    private static string Refusal(string reason, string useInstead) =>
        CatalogueWords.AsSentence(reason) + (useInstead.Length == 0 ? "" : " Instead: "
            + string.Join(", ", useInstead.Split(';', StringSplitOptions.TrimEntries).Select(key => HandbookAddress.OfKey(key, CatalogueData.Embedded).Name)) + ".");

    private static string Spelt(Citation citation) =>
        $"{string.Join("; ", citation.SourceKeys.Select(SourceList.Spelt))} ({citation.Where}); {CatalogueWords.Of(citation.Confidence)}.";
}
