namespace Alumroot.Paint.Arithmetic;

/// <summary>A dry pigment.</summary>
/// <param name="Grams">Its mass.</param>
/// <param name="OilGramsPer100">Oil absorption: grams of linseed oil that 100 g take up to a putty.</param>
/// <param name="GramsPerMillilitre">Its density.</param>
public readonly record struct DryPigment(double Grams, double OilGramsPer100, double GramsPerMillilitre)
{
    /// <summary>Its volume without air.</summary>
    public double Millilitres => Grams / GramsPerMillilitre;

    /// <summary>The critical pigment volume concentration: the share of pigment at which binder just fills the gaps, 1 / (1 + OA density / 93.5) (Asbeck and Van Loo 1949).</summary>
    /// <param name="oilGramsPerMillilitre">Density of the oil of the test.</param>
    public double CriticalFraction(double oilGramsPerMillilitre = Densities.LinseedOilGramsPerMillilitre) => 1 / (1 + OilGramsPer100 * GramsPerMillilitre / (100 * oilGramsPerMillilitre));

    /// <summary>Several pigments as one: oil absorption adds by mass, density by volume.</summary>
    public static DryPigment Mixed(IReadOnlyList<DryPigment> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double grams = parts.Sum(p => p.Grams);
        return new DryPigment(grams, parts.Sum(p => p.Grams * p.OilGramsPer100) / grams, grams / parts.Sum(p => p.Millilitres));
    }
}

/// <summary>Pigment and binder of a dry film.</summary>
/// <param name="PigmentMillilitres">Volume of the pigment.</param>
/// <param name="BinderMillilitres">Volume of the binder that stays.</param>
public readonly record struct PigmentVolume(double PigmentMillilitres, double BinderMillilitres)
{
    /// <summary>Share of pigment in the volume of the dry film.</summary>
    public double Fraction => PigmentMillilitres / (PigmentMillilitres + BinderMillilitres);

    /// <summary>The binder that a wanted share asks for.</summary>
    /// <param name="pigment">The pigment.</param>
    /// <param name="ratioToCritical">Wanted share over the critical one.</param>
    /// <param name="oilGramsPerMillilitre">Density of the oil of the test of oil absorption.</param>
    public static PigmentVolume For(DryPigment pigment, double ratioToCritical, double oilGramsPerMillilitre = Densities.LinseedOilGramsPerMillilitre)
    {
        double fraction = ratioToCritical * pigment.CriticalFraction(oilGramsPerMillilitre);
        return new PigmentVolume(pigment.Millilitres, pigment.Millilitres * (1 - fraction) / fraction);
    }
}
