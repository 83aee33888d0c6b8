using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Film;
using Alumroot.Colour.Matching;
using Alumroot.Numerics;

namespace Alumroot.Colour.Tests.Matching;

public class MixtureSearchTests(ITestOutputHelper output)
{
    private static readonly ViewingCondition Seen = ViewingCondition.Paint;

    [Fact]
    public void A_mixture_of_three_is_found_again_among_all_sets_of_twenty()
    {
        IReadOnlyList<ShelfPigment> shelf = Shelf.Pigments(20);
        var random = new SeededRandom(5);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        for (int round = 0; round < 8; round++)
        {
            (ShelfPigment[] used, double[] shares) = Drawn(shelf, 3, random);
            Spectrum made = Shelf.Reflectance(used, shares);
            IReadOnlyList<MixtureFound> found = MixtureSearch.Find(new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = shelf, Aims = MixtureAsk.AimsOf(made) });
            Assert.True(found[0].WorstDeltaE2000 < 0.2, $"{found[0].WorstDeltaE2000}");
            Assert.All(found, f => Assert.InRange(f.Parts.Count, 1, 3));
            Assert.All(found, f => Assert.Equal(1, f.Parts.Sum(p => p.Fraction.Value), 1e-9));
            Assert.All(found, f => Assert.All(f.Parts, p => Assert.True(p.Fraction.Value > 0 && p.Fraction.Low <= p.Fraction.Value && p.Fraction.Value <= p.Fraction.High)));
        }
        output.WriteLine($"{clock.ElapsedMilliseconds / 8} ms a search");
    }

    [Fact]
    public void Nothing_better_is_missed_in_pairs()
    {
        // Every pair of eight pigments in steps of a two-hundredth, by plain counting.
        IReadOnlyList<ShelfPigment> shelf = Shelf.Pigments(8);
        var random = new SeededRandom(11);
        for (int round = 0; round < 6; round++)
        {
            var aim = new Lab(30 + 40 * random.NextFraction(), 25 * random.NextNormal(), 25 * random.NextNormal());
            double counted = double.PositiveInfinity;
            for (int i = 0; i < shelf.Count; i++)
                for (int j = 0; j < i; j++)
                    for (int c = 0; c <= 200; c++)
                        counted = Math.Min(counted, Ciede2000.Of(aim, Shelf.LabOf([shelf[i], shelf[j]], [c / 200.0, 1 - c / 200.0], Seen)).DeltaE);
            MixtureFound found = MixtureSearch.Find(new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = shelf, Aims = [new ColourAim(Seen, aim)], MostPigments = 2 })[0];
            // The search minimises the distance as weighed at the aim, which departs from CIEDE2000 where nothing comes near.
            Assert.True(found.WorstDeltaE2000 < counted * 1.05 + 0.1, $"search {found.WorstDeltaE2000}, counting {counted}, aim {aim}");
        }
    }

    [Fact]
    public void The_shares_of_known_pigments_come_back_from_Lab_with_spans_that_hold()
    {
        IReadOnlyList<ShelfPigment> shelf = Shelf.Pigments(20);
        var random = new SeededRandom(17);
        int held = 0, told = 0;
        const double within = 0.5;
        for (int round = 0; round < 200; round++)
        {
            (ShelfPigment[] used, double[] shares) = Drawn(shelf, 3, random);
            Lab lab = Shelf.LabOf(used, shares, Seen);
            var exact = new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = used, Aims = [new ColourAim(Seen, lab)], AimWithinDeltaE = within };
            // Errors of the colour as large as the ask says: 0.2 a direction is within 0.5 nine times in ten.
            Lab read = Disturbed(lab, within / 2.5, random);
            if (round < 20 && MixtureSearch.Unmix(exact) is Unmixing.Known k)
                Assert.All(k.Mixture.Parts, p => Assert.Equal(shares[Array.FindIndex(used, u => u.Key == p.Key)], p.Fraction.Value, Math.Max(1e-3, (p.Fraction.High - p.Fraction.Low) / 50)));
            if (MixtureSearch.Unmix(exact with { Aims = [new ColourAim(Seen, read)] }) is not Unmixing.Known known || known.Mixture.Parts.Count < 3) continue;
            foreach (MixturePart part in known.Mixture.Parts)
            {
                double truth = shares[Array.FindIndex(used, u => u.Key == part.Key)];
                told++;
                if (part.Fraction.Low <= truth && truth <= part.Fraction.High) held++;
            }
        }
        output.WriteLine($"held {held / (double)told:0.000} of {told}");
        Assert.True(told > 300, $"{told}");
        Assert.InRange(held / (double)told, 0.85, 0.97);
    }

    [Fact]
    public void What_cannot_be_told_is_said()
    {
        IReadOnlyList<ShelfPigment> shelf = Shelf.Pigments(6);
        Assert.IsType<Unmixing.OutOfReach>(MixtureSearch.Unmix(new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = [.. shelf.Take(2)], Aims = [new ColourAim(Seen, new Lab(50, -100, 80))] }));
        // The same pigment under two names: any division has the colour.
        ShelfPigment[] twice = [shelf[0], shelf[3], shelf[3] with { Key = "again" }];
        Lab lab = Shelf.LabOf(twice, [0.6, 0.2, 0.2], Seen);
        Assert.IsType<Unmixing.NotDecided>(MixtureSearch.Unmix(new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = twice, Aims = [new ColourAim(Seen, lab)] }));
        Assert.Throws<ArgumentException>(() => MixtureSearch.Find(new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = [], Aims = [new ColourAim(Seen, lab)] }));
        Assert.Throws<ArgumentException>(() => MixtureSearch.Find(new MixtureAsk { Nanometres = [400, 500], Pigments = shelf, Aims = [new ColourAim(Seen, lab)] }));
    }

    [Fact]
    public void A_film_with_a_surface_over_a_ground_is_matched_too()
    {
        IReadOnlyList<ShelfPigment> shelf = Shelf.Pigments(8);
        var surface = new Surface(0.04, 0.6);
        double[] shares = [0.7, 0.3];
        Spectrum made = Spectrum.Of(Shelf.Nanometres, Shelf.Nanometres.Select((_, b) =>
            surface.Measured(FilmOptics.Over(Mixture.TwoConstant(shares, [shelf[0].Bands[b], shelf[2].Bands[b]]).Times(0.4), surface.Inside(0.8)))));
        var ask = new MixtureAsk { Nanometres = Shelf.Nanometres, Pigments = shelf, Aims = MixtureAsk.AimsOf(made), Surface = surface, Thickness = 0.4, MostPigments = 2 };
        MixtureFound found = MixtureSearch.Find(ask)[0];
        Assert.Equal([shelf[0].Key, shelf[2].Key], found.Parts.Select(p => p.Key));
        Assert.Equal(0.7, found.Parts[0].Fraction.Value, 1e-3);
        Assert.True(found.WorstDeltaE2000 < 0.01);
    }

    private static (ShelfPigment[] Used, double[] Shares) Drawn(IReadOnlyList<ShelfPigment> shelf, int n, SeededRandom random)
    {
        ShelfPigment[] used = [.. shelf.OrderBy(_ => random.NextFraction()).Take(n)];
        double[] parts = [.. used.Select(_ => 0.1 + random.NextFraction())];
        return (used, [.. parts.Select(p => p / parts.Sum())]);
    }

    private static Lab Disturbed(Lab lab, double sd, SeededRandom random)
    {
        // A direction at random, as far by CIEDE2000 as three normal errors are.
        double dl = random.NextNormal(), da = random.NextNormal(), db = random.NextNormal(), far = sd * Math.Sqrt(dl * dl + da * da + db * db), scale = sd;
        for (int i = 0; i < 5; i++) scale *= far / Ciede2000.Of(lab, new Lab(lab.L + scale * dl, lab.A + scale * da, lab.B + scale * db)).DeltaE;
        return new Lab(lab.L + scale * dl, lab.A + scale * da, lab.B + scale * db);
    }
}
