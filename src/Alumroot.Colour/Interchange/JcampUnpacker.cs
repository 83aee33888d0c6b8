namespace Alumroot.Colour.Interchange;

/// <summary>Unpacks the lines of (X++(Y..Y)): free numbers (AFFN), signs as separators (PAC), squeezed first digits (SQZ), differences (DIF) and repeats (DUP).</summary>
/// <remarks>
/// First digits by McDonald and Wilks 1988 (from memory, checked against an independent reader):
/// SQZ <c>@</c> 0, A to I 1 to 9, a to i -1 to -9; DIF <c>%</c> 0, J to R, j to r; DUP S to Z 1 to 8, s 9.
/// After a line that ends with a difference, the next line's first ordinate repeats the last one as a check.
/// </remarks>
internal sealed class JcampUnpacker(string sample, int most)
{
    private readonly List<double> _ordinates = [];
    private bool _endedWithDifference;

    internal IReadOnlyList<double> Ordinates => _ordinates;

    /// <summary>The index of the point at which the next line must begin.</summary>
    internal int DueIndex => _endedWithDifference ? _ordinates.Count - 1 : _ordinates.Count;

    /// <summary>Takes one line in.</summary>
    /// <returns>Its abscissa as written.</returns>
    internal double Line(int line, string text)
    {
        int at = 0;
        double abscissa = Free(text, ref at) ?? throw Odd(line, text);
        bool check = _endedWithDifference, difference = false;
        double last = 0, lastStep = 0;
        int taken = 0;
        while (true)
        {
            while (at < text.Length && text[at] is ' ' or '\t' or ',' or ';') at++;
            if (at >= text.Length) break;
            char c = text[at];
            if (Digit(c, 'S', 'Z', 1) is { } repeats || (c == 's' && (repeats = 9) > 0))
            {
                at++;
                int times = (int)Math.Min(Tail(text, ref at, repeats), int.MaxValue);
                if (taken == 0 || times < 1) throw Odd(line, text);
                for (int i = 1; i < times; i++) Put(last += difference ? lastStep : 0, line);
                continue;
            }
            if (c == '%' || Digit(c, 'J', 'R', 1) is not null || Digit(c, 'j', 'r', 1) is not null)
            {
                if (taken == 0) throw Odd(line, text);
                lastStep = Packed(text, ref at, '%', 'J', 'R');
                difference = true;
                Put(last += lastStep, line);
                continue;
            }
            difference = false;
            last = c == '@' || Digit(c, 'A', 'I', 1) is not null || Digit(c, 'a', 'i', 1) is not null ? Packed(text, ref at, '@', 'A', 'I') : Free(text, ref at) ?? throw Odd(line, text);
            if (taken++ > 0 || !check) Put(last, line);
            else if (Math.Abs(last - _ordinates[^1]) > 1e-6 * Math.Max(1, Math.Abs(last)))
                throw new FaultException(new(FaultKind.CheckValue, line) { Sample = sample, Found = SpectrumRules.Text(last), Expected = SpectrumRules.Text(_ordinates[^1]) });
        }
        _endedWithDifference = difference && taken > 0;
        return abscissa;
    }

    private void Put(double value, int line)
    {
        if (_ordinates.Count >= most) throw new FaultException(new(FaultKind.TooLarge, line) { Sample = sample });
        _ordinates.Add(value);
    }

    private static int? Digit(char c, char from, char to, int first) => c >= from && c <= to ? c - from + first : null;

    private static double Packed(string text, ref int at, char zero, char from, char to)
    {
        char c = text[at++];
        char low = (char)(from + ('a' - 'A')), high = (char)(to + ('a' - 'A'));
        if (c == zero) return Tail(text, ref at, 0);
        return Digit(c, from, to, 1) is { } plus ? Tail(text, ref at, plus) : -Tail(text, ref at, Digit(c, low, high, 1)!.Value);
    }

    /// <summary>The digits after a first one, with a decimal point where there is one.</summary>
    private static double Tail(string text, ref int at, double value)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at])) value = 10 * value + (text[at++] - '0');
        if (at >= text.Length || text[at] != '.') return value;
        double unit = 1;
        for (at++; at < text.Length && char.IsAsciiDigit(text[at]); at++) value += (unit /= 10) * (text[at] - '0');
        return value;
    }

    /// <summary>A number in free format; an E is an exponent only before a sign and a digit, since it is also a squeezed five.</summary>
    private static double? Free(string text, ref int at)
    {
        while (at < text.Length && text[at] is ' ' or '\t') at++;
        int start = at;
        if (at < text.Length && text[at] is '+' or '-') at++;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.')) at++;
        if (at + 2 < text.Length && text[at] is 'E' or 'e' && text[at + 1] is '+' or '-' && char.IsAsciiDigit(text[at + 2]))
            for (at += 2; at < text.Length && char.IsAsciiDigit(text[at]);) at++;
        return SpectrumRules.Number(text.AsSpan(start, at - start));
    }

    private FaultException Odd(int line, string text) => new(new(FaultKind.NotANumber, line) { Sample = sample, Field = "XYDATA", Found = text.Length > 40 ? text[..40] : text });
}
