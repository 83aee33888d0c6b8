using Alumroot.Permanence.Dose;
using Alumroot.Quantities;

namespace Alumroot.Permanence.Tests.Dose;

public sealed class LastingTests
{
    [Fact]
    public void Years_are_the_dose_over_the_dose_of_a_year()
    {
        // Padfield and Landi: 30 Mlx h are about 200 years at 50 lx for 8 hours a day.
        var gallery = new LightPlace("gallery", "in a gallery", new Estimate(50, 50, 50), 8 * 365, "padfield_landi1966");
        Assert.InRange(gallery.YearsTo(Estimate.Exact(30)).Value, 195, 210);
    }

    [Theory]
    // CIE 157: 15 klx h a year for the most sensitive; 450 lx for 12 h a day, near 2 Mlx h, is what print-permanence tests take for a display in a home.
    [InlineData("album", 0.015)]
    [InlineData("bright-wall", 2)]
    public void Known_places_have_their_published_dose(string key, double yearly) =>
        Assert.InRange(LightPlace.All.Single(p => p.Key == key).YearMegaluxHours.Value, 0.93 * yearly, 1.07 * yearly);

    [Fact]
    public void Places_go_from_dark_to_bright_and_years_from_many_to_few()
    {
        double[] years = [.. LightPlace.All.Select(p => p.YearsTo(new Estimate(3.9, 3.1, 4.9)).Value)];
        Assert.True(years.Length >= 5);
        Assert.Equal(years.OrderDescending(), years);
        Assert.Equal(LightPlace.All.OrderBy(p => p.YearMegaluxHours.Value).Select(p => p.Key).First(), LightPlace.All[0].Key);
        foreach (LightPlace place in LightPlace.All)
        {
            Estimate e = place.YearsTo(new Estimate(3.9, 3.1, 4.9));
            // Never surer than the place is known.
            Assert.True(e.High / e.Value > place.Lux.Value / place.Lux.Low && e.Value / e.Low > place.Lux.High / place.Lux.Value);
        }
    }

    [Theory]
    // Doses to 1.7 and 3.4 of two synthetic series with known curves (first order with the references of CIE 157; two populations), over 150 lx for 3500 h by hand.
    [InlineData(3.91324, 7.454)]
    [InlineData(8.08438, 15.399)]
    [InlineData(15.8256, 30.144)]
    [InlineData(34.8865, 66.450)]
    public void Years_on_an_inner_wall(double megaluxHours, double years) => Assert.Equal(years, LightPlace.Find("room").YearsTo(Estimate.Exact(megaluxHours)).Value, 3);

    [Fact]
    public void A_surer_dose_narrows_the_years_only_down_to_what_the_place_allows()
    {
        LightPlace room = LightPlace.All.Single(p => p.Key == "room");
        Estimate sure = room.YearsTo(Estimate.Exact(4)), unsure = room.YearsTo(new Estimate(4, 1, 16));
        Assert.True(unsure.High > sure.High && unsure.Low < sure.Low);
    }

    [Fact]
    public void What_extends_it_is_told_with_its_worth()
    {
        LightPlace window = LightPlace.All.Single(p => p.Key == "window"), album = LightPlace.All.Single(p => p.Key == "album");
        IReadOnlyList<Extending> ways = Extending.Of(window, 3);
        Assert.Equal(2, ways.Single(w => w.Way == ExtendingWay.HalfTheLight).Times);
        Assert.Equal("bright-wall", ways.Single(w => w.Way == ExtendingWay.DarkerPlace).Place!.Key);
        Assert.Equal(2, ways.Single(w => w.Way == ExtendingWay.UvFilter).Times, 9);
        // There is nothing darker than an album, and no ultraviolet to hold back; without a class a filter's worth is not told.
        Assert.Equal([ExtendingWay.HalfTheLight], Extending.Of(album, 3).Select(w => w.Way));
        Assert.DoesNotContain(Extending.Of(window, null), w => w.Way == ExtendingWay.UvFilter);
    }
}
