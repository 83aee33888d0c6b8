using Alumroot.Catalogue.Reading;
using Alumroot.Quantities;

namespace Alumroot.Catalogue;

/// <summary>What to expect, before any reading, of the acid that a class of dyestuffs brings into its liquor.</summary>
/// <remarks>Counted as the alkali that takes the liquor from its own pH to about 7, in thousandths of a mole of base (meq) per gram of dry dyestuff. The colourant's own acid groups are included. The spans are wide because little is published for dyestuffs; a titration or the first pH readings of a batch replace them.</remarks>
public sealed class PlantAcidPrior
{
    private PlantAcidPrior(Fields row)
    {
        Key = row.Key();
        Name = row.Required("name");
        AcidMeqPerGramDry = row.OptionalEstimate("acid_meq_per_g", "acid_low", "acid_high")
            ?? throw row.Wrong("acid_meq_per_g", "a prior needs low, middle and high");
        FirstPka = row.Number("first_pka");
        SecondPka = row.OptionalNumber("second_pka");
        FirstShare = row.Number("first_share");
        Acids = row.Text("acids");
        Note = row.Text("note");
        Citation = row.Citation();
    }

    /// <summary>The class, such as <c>root</c> or <c>berry</c>.</summary>
    public string Key { get; }

    /// <summary>The class in plain words.</summary>
    public string Name { get; }

    /// <summary>Titratable acid in meq per gram of dry dyestuff: 5, 50 and 95 % points.</summary>
    public Estimate AcidMeqPerGramDry { get; }

    /// <summary>Effective pKa of the stronger part.</summary>
    public double FirstPka { get; }

    /// <summary>Effective pKa of the weaker part; null when one is enough.</summary>
    public double? SecondPka { get; }

    /// <summary>Both parts taken as one acid, by their shares; a part weaker than this reckoning can hold counts as 6.5.</summary>
    public double MiddlePka => SecondPka is { } second ? FirstShare * FirstPka + (1 - FirstShare) * Math.Min(second, MostPka) : FirstPka;

    private const double MostPka = 6.5;

    /// <summary>Share of the acid that belongs to the stronger part, 0 to 1.</summary>
    public double FirstShare { get; }

    /// <summary>The acids thought to be there.</summary>
    public string Acids { get; }

    /// <summary>How the figures were come by.</summary>
    public string Note { get; }

    /// <summary>Where the row comes from.</summary>
    public Citation Citation { get; }

    internal static PlantAcidPrior Read(Fields row) => new(row);
}
