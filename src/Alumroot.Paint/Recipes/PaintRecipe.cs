using Alumroot.Paint.Arithmetic;
using Alumroot.Quantities;

namespace Alumroot.Paint.Recipes;

/// <summary>What a recipe is asked for.</summary>
/// <param name="Medium">The medium.</param>
/// <param name="PigmentGrams">Dry pigment in hand.</param>
/// <param name="OilGramsPer100">Oil absorption with its span.</param>
/// <param name="GramsPerMillilitre">Density with its span.</param>
/// <param name="WithHoney">Whether watercolour gets honey beside glycerine.</param>
/// <param name="CakeWaterFraction">Of a wet cake: the share of it that is water, from 0 to below 1; 0 for dry pigment.</param>
public sealed record PaintAsk(Medium Medium, double PigmentGrams, Estimate OilGramsPer100, Estimate GramsPerMillilitre, bool WithHoney = true, double CakeWaterFraction = 0)
{
    /// <summary>The wet cake to weigh out; as much as the pigment when it is dry.</summary>
    public double CakeGrams => PigmentGrams / (1 - CakeWaterFraction);
}

/// <summary>One part of a paint.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Grams">Its mass.</param>
/// <param name="Millilitres">Its volume.</param>
public sealed record PaintPart(string Name, Estimate Grams, Estimate Millilitres);

/// <summary>A recipe.</summary>
/// <param name="Ask">What was asked.</param>
/// <param name="Parts">The parts in the order of work.</param>
/// <param name="VolumeFraction">Share of pigment in the dry film by volume.</param>
/// <param name="CriticalFraction">The share at which binder just fills the gaps.</param>
/// <param name="WetMillilitres">Volume as it is filled.</param>
/// <param name="DryMillilitres">Volume once dry.</param>
public sealed record PaintRecipe(PaintAsk Ask, IReadOnlyList<PaintPart> Parts, Estimate VolumeFraction, Estimate CriticalFraction, Estimate WetMillilitres, Estimate DryMillilitres)
{
    /// <summary>Share of the wet volume that goes in drying.</summary>
    public double ShrinkageFraction => Math.Max(0, 1 - DryMillilitres.Value / WetMillilitres.Value);

    /// <summary>Water of the cake that the paint has no room for: pressed out, dried off, or driven out by the oil in flushing.</summary>
    public double WaterToLeaveGrams { get; private init; }

    /// <summary>Makes the recipe; spans follow from those of oil absorption and density, each moved alone and added as squares.</summary>
    public static PaintRecipe For(PaintAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        Plain middle = Plain.For(ask, ask.OilGramsPer100.Value, ask.GramsPerMillilitre.Value);
        Plain[] moved =
        [
            Plain.For(ask, ask.OilGramsPer100.Low, ask.GramsPerMillilitre.Value), Plain.For(ask, ask.OilGramsPer100.High, ask.GramsPerMillilitre.Value),
            Plain.For(ask, ask.OilGramsPer100.Value, ask.GramsPerMillilitre.Low), Plain.For(ask, ask.OilGramsPer100.Value, ask.GramsPerMillilitre.High),
        ];
        return new PaintRecipe(
            ask,
            [.. middle.Parts.Select((p, i) => new PaintPart(p.Name, Spanned(x => x.Parts[i].Grams), Spanned(x => x.Parts[i].Grams / x.Parts[i].Density)))],
            Spanned(x => x.Fraction), Spanned(x => x.Critical), Spanned(x => x.Wet), Spanned(x => x.Dry))
        {
            WaterToLeaveGrams = middle.Leaves,
        };

        Estimate Spanned(Func<Plain, double> of)
        {
            double value = of(middle), down = 0, up = 0;
            for (int pair = 0; pair < moved.Length; pair += 2)
            {
                double a = of(moved[pair]) - value, b = of(moved[pair + 1]) - value, least = Math.Min(0, Math.Min(a, b)), most = Math.Max(0, Math.Max(a, b));
                down += least * least;
                up += most * most;
            }
            return new Estimate(value, Math.Max(0, value - Math.Sqrt(down)), value + Math.Sqrt(up));
        }
    }

    /// <summary>The recipe for one oil absorption and density.</summary>
    private sealed record Plain(IReadOnlyList<(string Name, double Grams, double Density)> Parts, double Fraction, double Critical, double Lost, double Leaves)
    {
        // Shares of gum, glycerine and honey (dry) that are in use: 11.2, 3.6 and 2.7 g in a published pan recipe; without honey glycerine takes its part.
        private const double GumShare = 0.642, GlycerineShare = 0.206, WaterPerGum = 1.93;

        // Common practice, no source: chalk in gouache, water in a paste, gum in pastel, wax to resin, pigment in ink and in wax.
        private const double ChalkPerPigment = 1 / 3.0, ChalkDensity = 2.7, ChalkOil = 17, SolutionPerPowder = 0.35, PastelGum = 0.01, WaxParts = 8, InkPigment = 0.05, WaxPigment = 0.2, AlkydSolids = 0.55;
        private const double YolkSolids = 0.52, WhiteSolids = 0.12, WhiteDensity = 1.04, BoraxPerCasein = 0.4, WaterPerCasein = 6.25, BoraxDensity = 1.73, SpiritDensity = 0.78, PastelAir = 0.55;

        internal double Wet => Parts.Sum(p => p.Grams / p.Density);

        internal double Dry => Wet - Lost;

        internal static Plain For(PaintAsk ask, double oil, double density)
        {
            var pigment = new DryPigment(ask.PigmentGrams, oil, density);
            var parts = new List<(string Name, double Grams, double Density)> { ("pigment", pigment.Grams, density) };
            DryPigment solid = pigment;
            double lost = 0;
            string key = ask.Medium.Key;
            if (key == "gouache")
            {
                var chalk = new DryPigment(pigment.Grams * ChalkPerPigment, ChalkOil, ChalkDensity);
                parts.Add(("chalk", chalk.Grams, ChalkDensity));
                solid = DryPigment.Mixed([pigment, chalk]);
            }
            double critical = solid.CriticalFraction();
            PigmentVolume film = PigmentVolume.For(solid, Math.Min(ask.Medium.RatioTypical, 0.98 / critical), Densities.LinseedOilGramsPerMillilitre);
            double binder = film.BinderMillilitres * ask.Medium.DryBinderGramsPerMillilitre, water = 0;
            switch (key)
            {
                case "watercolour" or "gouache":
                    double gum = binder * GumShare, honey = ask.WithHoney ? binder * (1 - GumShare - GlycerineShare) / (1 - Densities.HoneyWaterFraction) : 0;
                    parts.Add(("gum arabic", ask.WithHoney ? gum : binder * 0.76, Densities.GumGramsPerMillilitre));
                    parts.Add(("glycerine", ask.WithHoney ? binder * GlycerineShare : binder * 0.24, Densities.GlycerineGramsPerMillilitre));
                    if (ask.WithHoney) parts.Add(("honey", honey, Densities.HoneyGramsPerMillilitre));
                    water = WaterPerGum * parts.First(p => p.Name == "gum arabic").Grams;
                    lost = (water + Densities.HoneyWaterFraction * honey) * 0.95 / Densities.WaterGramsPerMillilitre;
                    break;
                case "egg-tempera":
                    double yolk = binder / YolkSolids;
                    parts.Add(("egg yolk", yolk, Densities.YolkGramsPerMillilitre));
                    water = pigment.Grams;
                    lost = (water + yolk - binder) / Densities.WaterGramsPerMillilitre;
                    break;
                case "glair":
                    double white = binder / WhiteSolids;
                    parts.Add(("beaten egg white, stood overnight", white, WhiteDensity));
                    lost = (white - binder) / Densities.WaterGramsPerMillilitre;
                    break;
                case "casein":
                    double casein = binder / (1 + BoraxPerCasein);
                    parts.Add(("casein", casein, ask.Medium.DryBinderGramsPerMillilitre));
                    parts.Add(("borax", casein * BoraxPerCasein, BoraxDensity));
                    water = casein * WaterPerCasein;
                    lost = water / Densities.WaterGramsPerMillilitre;
                    break;
                case "soft-pastel":
                    double solution = pigment.Grams * SolutionPerPowder, tragacanth = solution * PastelGum;
                    parts.Add(("gum tragacanth", tragacanth, Densities.GumGramsPerMillilitre));
                    water = solution - tragacanth;
                    film = new PigmentVolume(pigment.Millilitres, tragacanth / Densities.GumGramsPerMillilitre);
                    // The dry stick keeps air, so it hardly shrinks.
                    double whole = (film.PigmentMillilitres + film.BinderMillilitres) / PastelAir;
                    lost = Math.Max(0, film.PigmentMillilitres + film.BinderMillilitres + water / Densities.WaterGramsPerMillilitre - whole);
                    break;
                case "alkyd":
                    parts.Add(("alkyd, what stays", binder, Densities.AlkydSolidsGramsPerMillilitre));
                    double spirit = binder * (1 - AlkydSolids) / AlkydSolids;
                    parts.Add(("its solvent", spirit, SpiritDensity));
                    lost = spirit / SpiritDensity;
                    break;
                case "ink":
                    double arabic = binder;
                    parts.Add(("gum arabic", arabic, Densities.GumGramsPerMillilitre));
                    water = Math.Max(0, pigment.Grams / InkPigment - pigment.Grams - arabic);
                    lost = water / Densities.WaterGramsPerMillilitre;
                    break;
                case "encaustic":
                    double wax = pigment.Grams * (1 - WaxPigment) / WaxPigment;
                    parts.Add(("beeswax", wax * WaxParts / (WaxParts + 1), Densities.BeeswaxGramsPerMillilitre));
                    parts.Add(("damar", wax / (WaxParts + 1), Densities.DamarGramsPerMillilitre));
                    film = new PigmentVolume(pigment.Millilitres, parts[1].Grams / Densities.BeeswaxGramsPerMillilitre + parts[2].Grams / Densities.DamarGramsPerMillilitre);
                    break;
                default:
                    parts.Add(("linseed oil", binder, ask.Medium.DryBinderGramsPerMillilitre));
                    break;
            }
            // The water of a wet cake serves as the paint's own; what is left over has to go.
            double brought = ask.CakeGrams - ask.PigmentGrams, serves = Math.Min(water, brought);
            if (brought > 0 && serves > 0) parts.Add(("water in the cake", serves, Densities.WaterGramsPerMillilitre));
            if (water - serves > 0) parts.Add(("water", water - serves, Densities.WaterGramsPerMillilitre));
            return new Plain(parts, film.Fraction, critical, lost, brought - serves);
        }
    }
}
