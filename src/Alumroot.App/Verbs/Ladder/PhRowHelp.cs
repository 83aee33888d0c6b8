using Alumroot.App.Requests;

namespace Alumroot.App.Verbs.Ladder;

/// <summary>What each field of a planned row means on the command line.</summary>
internal static class PhRowHelp
{
    internal static string Of(string field) => field switch
    {
        PlanFields.Dyestuff => "the dyestuff of the handbook; none for plain water",
        PlanFields.Dry => "dry dyestuff of the liquor; 10 g when left out",
        PlanFields.Water => "its water; 500 mL when left out",
        PhRowRequest.Jar => "liquor in each jar; 50 mL when left out",
        PlanFields.LiquorPh => "pH of the liquor, if it was read",
        PlanFields.Hardness => "hardness of the water; 14 dH when left out",
        PlanFields.Temperature => "temperature of the jars; 20 C when left out",
        PhRowRequest.Acid => "vinegar, citric-acid, citric-acid-1 or tartaric-acid",
        PlanFields.Alkali => "soda-ash, soda-crystals or potash",
        PhRowRequest.From => "pH of the first jar; 3 when left out",
        PhRowRequest.To => "pH of the last jar; 11 when left out",
        _ => throw new ArgumentException($"'{field}' is no field of a row.", nameof(field)),
    };
}
