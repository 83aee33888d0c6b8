using System.Globalization;
using Alumroot.Quantities.Units;

namespace Alumroot.Quantities.Reading;

/// <summary>Weighs all meanings a cleaned text can have in one field and decides between them.</summary>
/// <param name="kind">What the field asks for.</param>
/// <param name="make">Makes the quantity from a number of its own unit.</param>
/// <param name="number">The number of its own unit in a quantity.</param>
/// <param name="rule">What the field accepts.</param>
internal sealed class Interpreter<T>(QuantityKind kind, Func<double, T> make, Func<T, double> number, FieldRule<T> rule) where T : struct
{
    /// <summary>One meaning: its number in the field's own unit and how it came about. Meanings of one group differ in nothing that size could tell.</summary>
    private sealed record Meaning(double InBase, double Number, Unit Unit, int Group, IReadOnlyList<Doubt> Doubts, double? Low, double? High);

    public Parsed<T> Interpret(string text, string typed)
    {
        bool mayBeCompound = kind is QuantityKind.Mass or QuantityKind.Volume;
        TypedParts cut = TypedParts.Cut(text, mayBeCompound);
        if (cut.Failure is { } failure) return new Parsed<T>.NotUnderstood(failure, typed) { Part = cut.FailedPart };

        var choices = new List<IReadOnlyList<UnitChoice>>();
        foreach ((IReadOnlyList<double> numbers, string unit) in cut.Parts)
        {
            (IReadOnlyList<UnitChoice> units, UnitRefusal? refusal) = UnitChooser.Choose(kind, unit, rule.Kitchen, rule.Powder);
            if (refusal is not null) return Refused(refusal, cut.Parts.Count == 1 ? numbers : [], unit, typed);
            choices.Add(units);
        }

        List<Meaning> meanings = cut.Parts.Count == 1
            ? [.. Single(cut.Parts[0].Numbers, choices[0])]
            : [.. Sums([.. cut.Parts.Select(p => p.Numbers)], choices)];
        if (meanings.Count == 0) return new Parsed<T>.NotUnderstood(UnreadReason.PartsDoNotAdd, typed);
        meanings = meanings.ConvertAll(m => m with { InBase = Tidy(m.InBase) });
        if (cut.IsNegative) meanings = meanings.ConvertAll(m => m with { InBase = Tidy(m.Unit.InBase(-m.Number)), Number = -m.Number });
        return Decide(meanings, typed);
    }

    private static IEnumerable<Meaning> Single(IReadOnlyList<double> numbers, IReadOnlyList<UnitChoice> units)
    {
        for (int n = 0; n < numbers.Count; n++)
            for (int u = 0; u < units.Count; u++)
            {
                UnitChoice choice = units[u];
                var doubts = new List<Doubt>();
                if (numbers.Count > 1) doubts.Add(Doubt.Separator);
                if (choice.Doubt is { } doubt) doubts.Add(doubt);
                int group = choice.Doubt == Doubt.PercentOrRatio ? n * units.Count + u : n;
                yield return new Meaning(choice.Unit.InBase(numbers[n]), numbers[n], choice.Unit, group, doubts, choice.LowFactor * numbers[n], choice.HighFactor * numbers[n]);
            }
    }

    /// <summary>Sums of parts, each in a smaller unit than the one before and all of one kitchen.</summary>
    private static IEnumerable<Meaning> Sums(IReadOnlyList<IReadOnlyList<double>> numbers, IReadOnlyList<IReadOnlyList<UnitChoice>> units)
    {
        KitchenMeasures?[] kitchens = [.. units.SelectMany(u => u).Select(u => u.Unit.System).Where(s => s is not null).Distinct()];
        foreach (KitchenMeasures? kitchen in kitchens.Length == 0 ? [null] : kitchens)
        {
            UnitChoice?[] row = [.. units.Select(u => u.FirstOrDefault(c => c.Unit.System is null || c.Unit.System == kitchen))];
            if (row.Contains(null) || row.Zip(row.Skip(1)).Any(pair => pair.Second!.Unit.ToBase >= pair.First!.Unit.ToBase)) continue;
            double inBase = row.Select((c, i) => c!.Unit.InBase(numbers[i][0])).Sum();
            bool kitchenSaid = row.Any(c => c!.Unit.System is not null && c.Doubt is null);
            Doubt[] doubts = [.. row.Select(c => c!.Doubt).OfType<Doubt>().Distinct().Where(d => !(kitchenSaid && d == Doubt.Kitchen))];
            Unit first = row[0]!.Unit;
            bool spans = row.Any(c => c!.LowFactor is not null);
            yield return new Meaning(inBase, Tidy(first.FromBase(inBase)), first, 0, doubts,
                spans ? row.Select((c, i) => (c!.LowFactor ?? c.Unit.ToBase) * numbers[i][0]).Sum() : null,
                spans ? row.Select((c, i) => (c!.HighFactor ?? c.Unit.ToBase) * numbers[i][0]).Sum() : null);
        }
    }

    /// <summary>Fourteen digits, so that 140 °F is 60 °C and not 60.00000000000001.</summary>
    private static double Tidy(double x) => double.Parse(x.ToString("G14", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private Parsed<T> Decide(List<Meaning> meanings, string typed)
    {
        List<Meaning> allowed = meanings.FindAll(IsAllowed);
        if (allowed.Count == 0) return OutOfRange(meanings, typed);
        int[] sensible = [.. allowed.Where(IsSensible).Select(m => m.Group).Distinct()];
        if (sensible.Length > 0) allowed = allowed.FindAll(m => sensible.Contains(m.Group));
        Meaning first = allowed[0];
        return allowed.All(m => m.InBase == first.InBase)
            ? new Parsed<T>.Understood(make(first.InBase), typed, RestatementOf(first), BoundsOf(first))
            : new Parsed<T>.TwoReadings([.. allowed.Select(ReadingOf)], DoubtBetween(allowed), typed);
    }

    private Parsed<T> OutOfRange(List<Meaning> meanings, string typed)
    {
        Meaning first = meanings[0];
        bool signMatters = kind is not (QuantityKind.Temperature or QuantityKind.Acidity) && number(rule.Least) >= 0;
        if (signMatters && first.InBase < 0) return new Parsed<T>.NotUnderstood(UnreadReason.Negative, typed);
        if (kind != QuantityKind.Temperature && first.InBase == 0) return new Parsed<T>.NotUnderstood(UnreadReason.Zero, typed);
        if (meanings.TrueForAll(m => m.InBase < number(rule.Least)))
            return new Parsed<T>.NotUnderstood(UnreadReason.TooSmall, typed) { Limit = rule.Least };
        bool boiling = kind == QuantityKind.Temperature && number(rule.Most) <= 100;
        return new Parsed<T>.NotUnderstood(boiling ? UnreadReason.AboveBoiling : UnreadReason.TooLarge, typed)
        {
            Limit = rule.Most,
            Offers = OtherUnit(first.Unit.Symbol) is { } other ? Offers([first.Number], [other]) : [],
        };
    }

    /// <summary>The unit that was probably meant when the number is far too large for the one taken.</summary>
    private string? OtherUnit(string taken) => (kind, taken) switch
    {
        (QuantityKind.Temperature, "°C") => "°F",
        (QuantityKind.Hardness, "°dH") => "ppm CaCO3",
        _ => null,
    };

    private Parsed<T>.NotUnderstood Refused(UnitRefusal refusal, IReadOnlyList<double> numbers, string unit, string typed)
    {
        // "5o g": a letter o typed for a nought.
        if (refusal.Reason == UnreadReason.UnknownUnit && unit.StartsWith("o ", StringComparison.OrdinalIgnoreCase))
            (numbers, refusal) = ([.. numbers.Select(n => n * 10)], refusal with { Nearest = Symbols(unit[2..]) });
        string[] units = refusal.Reason switch
        {
            UnreadReason.MissingUnit => kind == QuantityKind.Mass ? ["g", "oz"] : ["mL", "L"],
            UnreadReason.UnknownUnit => [.. refusal.Nearest],
            _ => [],
        };
        return new Parsed<T>.NotUnderstood(refusal.Reason, typed)
        {
            Part = unit,
            GivenKind = refusal.GivenKind,
            NearestUnits = refusal.Nearest,
            Offers = Offers(numbers, units),
        };
    }

    private string[] Symbols(string unit) => [.. UnitChooser.Choose(kind, unit, rule.Kitchen, null).Choices.Select(c => c.Unit.Symbol).Where(s => s.Length > 0)];

    /// <summary>The numbers in each of the units, where the field accepts that; only usual values where there are any.</summary>
    private Reading<T>[] Offers(IReadOnlyList<double> numbers, IReadOnlyList<string> symbols)
    {
        Meaning[] allowed = [.. symbols
            .SelectMany(s => Single(numbers, [new UnitChoice(UnitTable.Get(kind, s), null)]))
            .Select(m => m with { InBase = Tidy(m.InBase) })
            .Where(IsAllowed)];
        return [.. (allowed.Any(IsSensible) ? allowed.Where(IsSensible) : allowed).Select(ReadingOf)];
    }

    private bool IsAllowed(Meaning m) =>
        m.InBase == 0 ? rule.ZeroAllowed : m.InBase >= number(rule.Least) && m.InBase <= number(rule.Most);

    private bool IsSensible(Meaning m) => m.InBase >= number(rule.SensibleLow) && m.InBase <= number(rule.SensibleHigh);

    private static Restatement? RestatementOf(Meaning m) => m.Doubts.Count == 0 ? null : new Restatement(m.Doubts[0], m.Number, m.Unit.Symbol);

    /// <summary>The doubt that all meanings have and that made them differ.</summary>
    private static Doubt DoubtBetween(List<Meaning> allowed) =>
        allowed.Select(m => m.Group).Distinct().Count() > 1 ? allowed[0].Doubts[0] : allowed[0].Doubts[^1];

    private Bounds<T>? BoundsOf(Meaning m) => m.Low is { } low && m.High is { } high ? new Bounds<T>(make(low), make(high)) : null;

    private Reading<T> ReadingOf(Meaning m) =>
        new(make(m.InBase), m.Number, m.Unit.Symbol, $"{NumberText.Write(m.Number)} {m.Unit.Symbol}".TrimEnd(), BoundsOf(m));
}
