using Alumroot.Quantities.Reading;

namespace Alumroot.Quantities.Tests.Reading;

/// <summary>Ways to write a number. Grouping marks follow the customs listed in SI Brochure 5.4.4 (thin blanks) and common practice (point, comma, apostrophe).</summary>
public class NumberReadingTests
{
    private static readonly FieldRule<double> Any = new(-1e12, -1e12, 1e12, 1e12) { ZeroAllowed = true };

    [Theory]
    [InlineData("1.5", 1.5)]
    [InlineData("1,5", 1.5)]
    [InlineData("1½", 1.5)]
    [InlineData("1 ½", 1.5)]
    [InlineData("1 1/2", 1.5)]
    [InlineData("1-1/2", 1.5)]
    [InlineData("1 1⁄2", 1.5)]
    [InlineData("3/2", 1.5)]
    [InlineData("½", 0.5)]
    [InlineData("¾", 0.75)]
    [InlineData(".5", 0.5)]
    [InlineData(",5", 0.5)]
    [InlineData("5.", 5)]
    [InlineData("0,125", 0.125)]
    [InlineData("0.125", 0.125)]
    [InlineData("1234.567", 1234.567)]
    [InlineData("1.234,5", 1234.5)]
    [InlineData("1,234.5", 1234.5)]
    [InlineData("1,234.567", 1234.567)]
    [InlineData("1 234,5", 1234.5)]
    [InlineData("1\u202F234.5", 1234.5)]
    [InlineData("1\u00A0234", 1234)]
    [InlineData("1'234.5", 1234.5)]
    [InlineData("1’234’567", 1234567)]
    [InlineData("1,234,567", 1234567)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1e3", 1000)]
    [InlineData("2.5E-3", 0.0025)]
    [InlineData("1,500e3", 1500)]
    [InlineData("-5", -5)]
    [InlineData("\u22125", -5)]
    [InlineData("+5", 5)]
    [InlineData("~5", 5)]
    [InlineData("about 5", 5)]
    [InlineData("ca. 5", 5)]
    [InlineData("\uFF11\uFF0E\uFF15", 1.5)]
    [InlineData("\u0661\u066B\u0665", 1.5)]
    [InlineData("\u200E 5 \u200F", 5)]
    [InlineData("007", 7)]
    public void A_number_with_one_meaning_is_read(string typed, double expected)
    {
        var understood = Assert.IsType<Parsed<double>.Understood>(QuantityReader.ReadNumber(typed, Any));
        Assert.Equal(expected, understood.Value, 12);
        Assert.Null(understood.Restated);
        Assert.Equal(typed, understood.Typed);
    }

    [Theory]
    [InlineData("1,500", 1.5, 1500, "1.5", "1500")]
    [InlineData("1.500", 1.5, 1500, "1.5", "1500")]
    [InlineData("12,345", 12.345, 12345, "12.3450", "12345")]
    [InlineData("999.999", 999.999, 999999, "999.9990", "999999")]
    public void One_mark_before_three_digits_has_two_readings(string typed, double first, double second, string firstText, string secondText)
    {
        var two = Assert.IsType<Parsed<double>.TwoReadings>(QuantityReader.ReadNumber(typed, Any));
        Assert.Equal((first, second, Doubt.Separator), (two.First.Value, two.Second.Value, two.Doubt));
        Assert.Equal((firstText, secondText), (two.First.Rewritten, two.Second.Rewritten));
        Assert.Equal(first, QuantityReader.ReadNumber(two.First.Rewritten, Any).ValueOrNull);
        Assert.Equal(second, QuantityReader.ReadNumber(two.Second.Rewritten, Any).ValueOrNull);
    }

    [Theory]
    [InlineData("1.2.3", UnreadReason.NumberUnreadable)]
    [InlineData("1,50,000", UnreadReason.NumberUnreadable)]
    [InlineData("1.234,567.8", UnreadReason.NumberUnreadable)]
    [InlineData("1,,5", UnreadReason.NumberUnreadable)]
    [InlineData("3/0", UnreadReason.NumberUnreadable)]
    [InlineData("3/4/26", UnreadReason.NumberUnreadable)]
    [InlineData("1e999", UnreadReason.NumberUnreadable)]
    [InlineData("NaN", UnreadReason.NoNumber)]
    [InlineData("Infinity", UnreadReason.NoNumber)]
    [InlineData("five", UnreadReason.NoNumber)]
    [InlineData("--5", UnreadReason.NoNumber)]
    [InlineData("-", UnreadReason.NoNumber)]
    [InlineData("3-4", UnreadReason.SpanTyped)]
    [InlineData("3 – 4", UnreadReason.SpanTyped)]
    [InlineData("3 to 4", UnreadReason.SpanTyped)]
    [InlineData("3 ± 0.5", UnreadReason.SpanTyped)]
    [InlineData("", UnreadReason.Empty)]
    [InlineData("   \t", UnreadReason.Empty)]
    [InlineData(null, UnreadReason.Empty)]
    public void What_is_not_one_number_says_why(string? typed, UnreadReason reason) =>
        Assert.Equal(reason, Assert.IsType<Parsed<double>.NotUnderstood>(QuantityReader.ReadNumber(typed, Any)).Reason);
}
