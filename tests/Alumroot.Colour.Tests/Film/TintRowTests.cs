using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Colour.Tests.Matching;
using Alumroot.Numerics;

namespace Alumroot.Colour.Tests.Film;

/// <summary>Rows of tints by hand, by laws, and against the same powders reckoned with whole spectra: measured reflectances (Parkkinen and others 1989) with invented scattering, let down with a white.</summary>
public sealed class TintRowTests
{
    private const double Black = 0.04, White = 0.86, GramsPerSquareMetre = 2.4;
    private static readonly double[] Row = [1, 0.5, 0.25, 0.125, 0.0625];
    private static readonly IReadOnlyList<ShelfPigment> Pigments = [.. Shelf.Pigments(31).Skip(1)];

    // By hand: full colour 0.2, K/S = 0.8² / 0.4 = 1.6; white 0.9, K/S = 0.1² / 1.8; half and half with scattering alike K/S = 0.80278, R = 1 / (1.80278 + sqrt(0.80278 x 2.80278)) = 0.30278, L* = 116 x 0.30278^(1/3) - 16 (CIE 15).
    [Fact]
    public void A_grey_by_hand()
    {
        ExpectedTint half = new TintRow(new TintBasis.Full(Grey(0.2)), new WhitePowder(Grey(0.9), 0.1, 0.1, 0.1), 0).Colours([0.5]).Single();
        Assert.Equal(61.89, half.Colour.L, 0.01);
        Assert.Equal(0, half.Colour.A, 1e-6);
        // Alike between a third and three: the pigment counts as 0.25 or 0.75 of the scattering, L* 70.76 or 56.11 by the same hand; the other doubts add a little.
        Assert.InRange(half.High.L, 70.76, 71.3);
        Assert.InRange(half.Low.L, 55.6, 56.11);
    }

    [Fact]
    public void The_measured_tint_is_on_the_row_and_the_ends_are_full_colour_and_white()
    {
        WhitePowder chalk = WhitePowder.Chalk;
        var full = new Lab(45, 40, 18);
        Lab tint = new TintRow(new TintBasis.Full(full), chalk, 0).Colours([0.125]).Single().Colour;
        var row = new TintRow(new TintBasis.FullAndTint(full, tint, 0.125), chalk, 1);
        // What was made with scattering alike comes out alike.
        Assert.Equal(1, row.ScatteringRatio!.Value, 1e-6);
        Assert.True(row.MissedDeltaE2000 < 1e-6);
        IReadOnlyList<ExpectedTint> told = row.Colours([1, 0.125, 1e-9]);
        Assert.Equal(full, told[0].Colour);
        Assert.Equal(chalk.Colour.L, told[2].Colour.L, 1e-3);
        Assert.Equal(chalk.Colour.B, told[2].Colour.B, 1e-3);
        Assert.All(told, t => Assert.True(t.Low.L <= t.Colour.L && t.Colour.L <= t.High.L && t.WithinDeltaE2000 >= 1));
    }

    [Fact]
    public void A_drawdown_that_hides_tells_the_ratio_and_one_that_is_clear_says_so()
    {
        Lab red = new(42, 38, 20);
        var hides = new TintRow(new TintBasis.Drawn(new ColourDrawdown(red, Grey(Black), red, Grey(White)), 30), WhitePowder.Chalk, 1);
        Assert.False(hides.IsScatteringTold);
        Assert.Equal(new TintRow(new TintBasis.Full(red), WhitePowder.Chalk, 1).Colours([0.5])[0].Colour.L, hides.Colours([0.5])[0].Colour.L, 0.05);
        var clear = new TintRow(new TintBasis.Drawn(new ColourDrawdown(Grey(Black * 0.5), Grey(Black), Grey(White * 0.5), Grey(White)), 30), WhitePowder.Chalk, 1);
        Assert.IsType<FilmFound.Clear>(clear.Trouble);
        Assert.Empty(clear.Colours([0.5]));
    }

    /// <summary>The span of each number and of the distance holds about nine tints in ten, with readings that err and a white of another strength than was thought.</summary>
    [Theory]
    [InlineData("drawn")]
    [InlineData("full")]
    [InlineData("full and tint")]
    public void Spans_hold_nine_in_ten(string kind)
    {
        const double within = 1;
        var random = new SeededRandom(20261127);
        int[] holds = new int[4];
        int count = 0;
        foreach (ShelfPigment p in Enumerable.Range(0, 8).SelectMany(_ => Pigments))
        {
            // In grams on a square metre: the pigments scatter 0.03 to 0.18, the white 0.1 within a factor of 2.5 nine times in ten.
            double strength = 0.1 * Math.Exp(random.NextNormal() * Math.Log(2.5) / Distributions.NormalHalfWidth90);
            Layer[] pigment = [.. p.Bands.Select(x => x.Times(0.1))], white = [.. Shelf.Nanometres.Select(nm => new Layer(strength * FilmOptics.AbsorptionRatio(0.9 - 0.06 * Math.Max(0, (480 - nm) / 100)), strength))];
            Lab Tint(double c) => Colour(pigment.Zip(white, (x, w) => FilmOptics.Opaque(Mixture.TwoConstant([c, 1 - c], [x, w]))));
            Lab Over(double ground) => Noisy(Colour(pigment.Select(x => FilmOptics.Over(x.Times(GramsPerSquareMetre), ground))));
            TintBasis basis = kind switch
            {
                "drawn" => new TintBasis.Drawn(new ColourDrawdown(Over(Black), Grey(Black), Over(White), Grey(White)), GramsPerSquareMetre),
                "full" => new TintBasis.Full(Noisy(Tint(1))),
                _ => new TintBasis.FullAndTint(Noisy(Tint(1)), Noisy(Tint(0.125)), 0.125),
            };
            foreach (ExpectedTint told in new TintRow(basis, new WhitePowder(Colour(white.Select(FilmOptics.Opaque)), 0.04, 0.1, 0.25), within).Colours(Row))
            {
                Lab truth = Tint(told.PigmentFraction);
                count++;
                bool[] held = [Held(x => x.L), Held(x => x.A), Held(x => x.B), Ciede2000.Of(truth, told.Colour).DeltaE <= told.WithinDeltaE2000];
                for (int i = 0; i < held.Length; i++) holds[i] += held[i] ? 1 : 0;

                bool Held(Func<Lab, double> of) => of(truth) >= of(told.Low) && of(truth) <= of(told.High);
            }
        }
        Assert.True(count > 600, $"{count} told");
        Assert.All(holds, h => Assert.True(h >= 0.88 * count, $"{string.Join(", ", holds)} of {count}"));

        Lab Noisy(Lab lab)
        {
            double s = 0.66 * within / Distributions.NormalHalfWidth90;
            return new Lab(Math.Clamp(lab.L + s * random.NextNormal(), 0, 100), lab.A + s * random.NextNormal(), lab.B + s * random.NextNormal());
        }
    }

    private static Lab Colour(IEnumerable<double> values) => Shelf.LabOf(Spectrum.Of(Shelf.Nanometres, values), ViewingCondition.Graphic);

    private static Lab Grey(double reflectance) => Colour(Shelf.Nanometres.Select(_ => reflectance));
}
