using Alumroot.Paint.Recipes;
using Alumroot.Paint.Suiting;
using Alumroot.Quantities.Tables;

namespace Alumroot.Paint.Tests;

/// <summary>How mediums bear kinds of colour.</summary>
public sealed class SuitabilityTests
{
    private static IReadOnlyList<TableRow> Judged => [.. Table.Parse("suitability.csv", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", "suitability.csv"))).Rows];

    // The judgements were made row by row, the program's follow from pH, heat and a list of effects.
    [Fact]
    public void Agrees_with_judgements_made_by_hand()
    {
        string[] differ = [.. Judged.Where(r => !string.Equals(Of(r["medium"], r["colourant_class"]).Rating.ToString(), r["rating"], StringComparison.OrdinalIgnoreCase)).Select(r => $"{r["medium"]} {r["colourant_class"]} {r["rating"]}")];
        Assert.Equal(180, Judged.Count);
        Assert.Empty(differ);
    }

    // Common practice, no source: lime and ammonia spoil cochineal, berries are lost in egg white, madder bears most.
    [Theory]
    [InlineData("watercolour", "anthraquinone-madder", SuitRating.Works)]
    [InlineData("glair", "anthocyanin", SuitRating.Avoid)]
    [InlineData("casein", "anthraquinone-insect", SuitRating.Caution)]
    [InlineData("oil", "carotenoid", SuitRating.Avoid)]
    public void Known_pairs(string medium, string colour, SuitRating rating) => Assert.Equal(rating, Of(medium, colour).Rating);

    [Fact]
    public void Every_warning_has_a_reason_with_a_source() => Assert.All(ColourantClass.All.SelectMany(Suitability.Of), s =>
    {
        Assert.True(s.Rating == SuitRating.Works || s.Reasons[0].Rating == s.Rating);
        Assert.All(s.Reasons, r => Assert.NotEmpty(r.Sources));
    });

    private static Suitability Of(string medium, string colour) => Suitability.Of(Medium.Find(medium)!, ColourantClass.Find(colour)!);
}
