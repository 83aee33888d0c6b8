namespace Alumroot.Quantities.Reading;

/// <summary>Rules for the fields of a lake plan. The limits are the project's own: wide for a small studio, narrow enough to catch a slip.</summary>
public static class FieldRules
{
    /// <summary>Plant or other dyestuff: usually 1 g to 20 kg.</summary>
    public static FieldRule<Mass> DyestuffMass { get; } = MassRule(0.001, 1, 20_000, 1_000_000);

    /// <summary>A salt, an alkali or any other thing weighed out: usually 0.1 g to 10 kg.</summary>
    public static FieldRule<Mass> ReagentMass { get; } = MassRule(0.001, 0.1, 10_000, 1_000_000);

    /// <summary>The smallest step a scale shows: usually 1 mg to 10 g.</summary>
    public static FieldRule<Mass> ScaleStep { get; } = MassRule(0.00001, 0.001, 10, 1000);

    /// <summary>Water of a bath: usually 50 mL to 200 L.</summary>
    public static FieldRule<Volume> Water { get; } = VolumeRule(1, 50, 200_000, 10_000_000);

    /// <summary>The room in a vessel: usually 100 mL to 500 L.</summary>
    public static FieldRule<Volume> Vessel { get; } = VolumeRule(1, 100, 500_000, 10_000_000);

    /// <summary>A water bath: from freezing to boiling.</summary>
    public static FieldRule<Temperature> BathTemperature { get; } = new(Temperature.FromCelsius(0), Temperature.FromCelsius(5), Temperature.FromCelsius(100), Temperature.FromCelsius(100)) { ZeroAllowed = true };

    /// <summary>A pH, aimed at or read: usually 2 to 12.</summary>
    public static FieldRule<Ph> Ph { get; } = new(Quantities.Ph.FromValue(0), Quantities.Ph.FromValue(2), Quantities.Ph.FromValue(12), Quantities.Ph.FromValue(14)) { ZeroAllowed = true };

    /// <summary>The smallest step a strip or meter shows, in pH: usually 0.01 to 1.</summary>
    public static FieldRule<double> PhStep { get; } = new(0.001, 0.01, 1, 3);

    /// <summary>Hardness of a water: usually 0 to 60 °dH.</summary>
    public static FieldRule<Hardness> WaterHardness { get; } = new(Hardness.FromGermanDegrees(0), Hardness.FromGermanDegrees(0), Hardness.FromGermanDegrees(60), Hardness.FromGermanDegrees(100)) { ZeroAllowed = true };

    /// <summary>A conductivity, read or aimed at: usually 5 to 100 000 µS/cm.</summary>
    public static FieldRule<Conductivity> Conductivity { get; } = new(Quantities.Conductivity.FromMicrosiemensPerCentimetre(0), Quantities.Conductivity.FromMicrosiemensPerCentimetre(5), Quantities.Conductivity.FromMicrosiemensPerCentimetre(100_000), Quantities.Conductivity.FromMicrosiemensPerCentimetre(1_000_000)) { ZeroAllowed = true };

    /// <summary>How pure a reagent is: usually 20 to 100 %.</summary>
    public static FieldRule<Fraction> Purity { get; } = new(Fraction.FromPercent(0), Fraction.FromPercent(20), Fraction.Whole, Fraction.Whole);

    /// <summary>What part of its mass a thing lost on heating: usually 2 to 70 %.</summary>
    public static FieldRule<Fraction> MassLoss { get; } = new(Fraction.FromPercent(0), Fraction.FromPercent(2), Fraction.FromPercent(70), Fraction.Whole) { ZeroAllowed = true };

    /// <summary>The strength of a lye: usually 0.001 to 10 mol/L.</summary>
    public static FieldRule<AlkalinityOfLye> LyeAlkalinity { get; } = new(AlkalinityOfLye.FromMolesPerLitre(0), AlkalinityOfLye.FromMolesPerLitre(0.001), AlkalinityOfLye.FromMolesPerLitre(10), AlkalinityOfLye.FromMolesPerLitre(25));

    private static FieldRule<Mass> MassRule(double leastGrams, double lowGrams, double highGrams, double mostGrams) =>
        new(Mass.FromGrams(leastGrams), Mass.FromGrams(lowGrams), Mass.FromGrams(highGrams), Mass.FromGrams(mostGrams));

    private static FieldRule<Volume> VolumeRule(double leastMillilitres, double lowMillilitres, double highMillilitres, double mostMillilitres) =>
        new(Volume.FromMillilitres(leastMillilitres), Volume.FromMillilitres(lowMillilitres), Volume.FromMillilitres(highMillilitres), Volume.FromMillilitres(mostMillilitres));
}
