using System.Globalization;

namespace Alumroot.App.Requests;

/// <summary>Reads what a lot cost, as the maker wrote it.</summary>
internal static class TypedMoney
{
    /// <summary>The first number of what was typed: "4,20 for the bag" is 4.20; what money it is does not matter here. Null when there is none above nothing.</summary>
    internal static double? Of(string? typed)
    {
        string digits = new([.. (typed ?? "").SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or ',')]);
        return double.TryParse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double price) && price > 0 ? price : null;
    }
}
