namespace Alumroot.Chemistry.Air;

/// <summary>How many moles of gas the bench can set free at most.</summary>
/// <remarks>Molar masses from the formulas with standard atomic weights (iupac2021).</remarks>
public static class GasSources
{
    private const double PotashAlumGramsPerMole = 474.39;
    private const double BicarbonateGramsPerMole = 84.007;
    private const double SodaGramsPerMole = 105.988;
    private const double AluminiumGramsPerMole = 26.982;
    private const double AmmoniaGramsPerMole = 17.03;

    /// <summary>Carbon dioxide when all the aluminium of potash alum becomes hydroxide by a carbonate: 1.5 mol for each mole.</summary>
    /// <param name="alumGrams">Potash alum with its twelve waters.</param>
    public static double FromAlumAndCarbonateMol(double alumGrams) => 1.5 * alumGrams / PotashAlumGramsPerMole;

    /// <summary>Carbon dioxide of bicarbonate of soda in an excess of acid: one mole for each.</summary>
    public static double FromBicarbonateMol(double bicarbonateGrams) => bicarbonateGrams / BicarbonateGramsPerMole;

    /// <summary>Carbon dioxide of soda ash in an excess of acid: one mole for each.</summary>
    public static double FromSodaMol(double sodaGrams) => sodaGrams / SodaGramsPerMole;

    /// <summary>Hydrogen of aluminium in alkali: 1.5 mol for each mole.</summary>
    public static double FromAluminiumMol(double aluminiumGrams) => 1.5 * aluminiumGrams / AluminiumGramsPerMole;

    /// <summary>Ammonia of a solution that loses all of it.</summary>
    /// <param name="solutionMillilitres">Volume of the solution.</param>
    /// <param name="densityGramsPerMillilitre">Its density.</param>
    /// <param name="massPercent">Ammonia in percent by mass.</param>
    public static double FromAmmoniaMol(double solutionMillilitres, double densityGramsPerMillilitre, double massPercent) =>
        solutionMillilitres * densityGramsPerMillilitre * massPercent / 100 / AmmoniaGramsPerMole;

    /// <summary>The share of dissolved ammonia that is free and can leave: 1 / (1 + 10^(pKa − pH)).</summary>
    public static double FreeAmmoniaShare(double ph, double pka) => 1 / (1 + Math.Pow(10, pka - ph));
}
