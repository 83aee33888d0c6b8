using System.Globalization;
using Alumroot.Chemistry.Planning;
using Alumroot.Trials.Spot;

namespace Alumroot.App.Trials.Spot;

/// <summary>How many drops of soda a salt's drops take, by the masses of the chemistry room.</summary>
internal static class SpotDrops
{
    private const string Soda = "soda-ash";

    /// <summary>Drops of soda for the metal alone; the liquor's own acid takes more.</summary>
    internal static double Soda1Percent(SpotSalt salt)
    {
        Substance substance = SubstanceShelf.Find(salt.Salt)!, soda = SubstanceShelf.Find(Soda)!;
        int charge = int.Parse(salt.Metal[(salt.Metal.IndexOf('+', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture);
        return salt.SodaDrops(substance.MolPerUnit(salt.Metal), charge, soda.BaseMolPerUnit);
    }

    /// <summary>"about 3".</summary>
    internal static string Words(SpotSalt salt) => string.Create(CultureInfo.InvariantCulture, $"about {Math.Max(1, Math.Round(Soda1Percent(salt))):0}");
}
