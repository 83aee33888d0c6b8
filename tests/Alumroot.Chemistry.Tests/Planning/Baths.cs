using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Tests.Planning;

/// <summary>Plan inputs that several tests share.</summary>
internal static class Baths
{
    internal static LakePlanInput Of(string salt, double saltGrams, string alkali, double litres, double celsius, PlanAim aim, double dryGrams = 0, double acid = 0, double hardnessDegrees = 0) => new()
    {
        DryDyestuff = dryGrams > 0 ? Mass.FromGrams(dryGrams) : null,
        Water = Volume.FromLitres(litres),
        Hardness = Hardness.FromGermanDegrees(hardnessDegrees),
        PlantAcidMilliequivalentsPerGram = new Estimate(acid, acid / 3, acid * 3),
        Salts = [new SaltPortion(SubstanceShelf.Find(salt)!, Mass.FromGrams(saltGrams))],
        Alkali = SubstanceShelf.Find(alkali)!,
        Temperature = Temperature.FromCelsius(celsius),
        Aim = aim,
    };

    internal static LakePlan Plan(LakePlanInput input) => Assert.IsType<PlanOutcome.Planned>(LakePlanner.Plan(input)).Plan;

    internal static PlanAim ToPh(double ph) => new PlanAim.ToPh(Ph.FromValue(ph));
}
