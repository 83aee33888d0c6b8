using System.Globalization;
using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Bench;

/// <summary>What a form of the bench says, before and after it is read. The same reading serves the post and the page that asks again.</summary>
public sealed class BenchForm
{
    /// <summary>Names of its fields.</summary>
    public const string Entry = "entry", After = "after", ActField = "act", Amount = "amount", Bowl = "bowl", Ph = "ph", Instrument = "instrument", Conductivity = "conductivity", Wait = "wait", Sure = "sure", Lot = "lot", Sieve = "sieve-", Row = "row";

    private const int MostWaitDays = 60;
    private readonly Func<string, string?> _typed;

    private BenchForm(Act act, Func<string, string?> typed) => (Act, _typed) = (act, typed);

    /// <summary>What is to be kept.</summary>
    public Act Act { get; }

    /// <summary>The entry's content; null when something is wrong or has to be asked.</summary>
    public BatchStep? Document { get; private set; }

    /// <summary>What is wrong, in a sentence; null when nothing is.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The field that is wrong.</summary>
    public string Field { get; private set; } = Amount;

    /// <summary>Texts with one meaning that may be taken in place of what was typed.</summary>
    public IReadOnlyList<string> Offers { get; private set; } = [];

    /// <summary>A weight that looks wrong: asked before it is kept.</summary>
    public BowlQuestion? Question { get; private set; }

    /// <summary>What was typed in a field, exactly.</summary>
    public string? Typed(string field) => _typed(field) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>Reads a form or the address that asks again; null when it names no act.</summary>
    /// <param name="typed">Text by field name.</param>
    /// <param name="lake">The batch.</param>
    /// <param name="studio">Whose bowls are known.</param>
    /// <param name="now">The time, for waits.</param>
    public static BenchForm? Read(Func<string, string?> typed, LakeInWork lake, StudioState studio, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(lake);
        ArgumentNullException.ThrowIfNull(studio);
        if (Acts.Find(typed(ActField)) is not { } act) return null;
        var form = new BenchForm(act, typed);
        form.ReadValues(lake, studio, now);
        return form;
    }

    private void ReadValues(LakeInWork lake, StudioState studio, DateTimeOffset now)
    {
        var step = new BatchStep(Act.Step) { Act = Act.Name, Ended = Act.Ends };
        Document = Act.Value switch
        {
            ActValue.Amount or ActValue.AmountIfMeasured => ReadAmount(step, lake, studio),
            ActValue.Ph => Typed(Ph) is { } ph ? WithValue(step, TypedAmount.PhOf(ph, Typed(Instrument) == "meter" ? "meter" : "strip"), Ph, Resolution(lake)) : step,
            ActValue.Conductivity => Typed(Conductivity) is { } conductivity ? WithValue(step, TypedAmount.ConductivityOf(WithUnit(conductivity, " µS/cm")), Conductivity, null) : step,
            ActValue.Wait => ReadWait(step, now),
            ActValue.Sieves => ReadSieves(step),
            ActValue.Row => ReadRow(step),
            _ => step,
        };
    }

    private BatchStep? ReadAmount(BatchStep step, LakeInWork lake, StudioState studio)
    {
        if (Typed(Amount) is not { } typed)
        {
            if (Act.Value == ActValue.AmountIfMeasured) return step;
            return Wrong(Amount, "Nothing was typed. Write a number and a unit, such as 50 g or 2 L.");
        }
        TypedAmount read = TypedAmount.Amount(typed);
        if (read.Value is not { } value)
        {
            Offers = read.Offers;
            return Wrong(Amount, read.Trouble!);
        }
        bool weight = value.SiUnit == Measured.Kilogram;
        if (Act == Acts.Strained || Act == Acts.WashIn ? weight : !weight && !MayBePoured(lake))
            return Wrong(Amount, weight ? $"Amount: '{typed}' is a weight. Give the volume, such as 2.6 L." : $"Amount: '{typed}' is a volume. Weigh it, and give the weight, such as 50 g.");
        value = value with { Instrument = weight ? "scale" : "jug", ResolutionSi = weight ? lake.Plan?.Input.ScaleStep.Grams / 1000 : null };
        if (weight && Bowls.Find(Typed(Bowl), studio) is { } bowl)
        {
            value = Bowls.Off(value, bowl);
            if (value.SiValue <= 0) return Wrong(Amount, $"Amount: '{typed}' is no more than the empty bowl {bowl.Bowl} ({bowl.Empty.Typed}). Weigh again, or take no bowl off.");
        }
        else if (weight && Typed(Sure) is null && BenchGuide.PlannedGrams(lake, Act) is { } planned && Bowls.Ask(value.SiValue * 1000, planned, studio) is { } question)
        {
            Question = question;
            return null;
        }
        string? lot = Typed(Lot) is { } named && SubjectKey.TryRead(named) is { Class: SubjectClass.Lot } key ? key.ToString() : null;
        return step with { Values = [value], Uses = lot is null ? [] : [new LotUse(lot, value)] };
    }

    private bool MayBePoured(LakeInWork lake) => Act == Acts.Strained || Act == Acts.WashIn || Act == Acts.DrawnOff
        || (Act == Acts.AlkaliIn && (lake.Count(Acts.AlkaliDissolved) > 0 || lake.Plan?.Input.Alkali.Unit == Chemistry.Planning.SubstanceUnit.Millilitre));

    private BatchStep? WithValue(BatchStep step, TypedAmount read, string field, double? resolution)
    {
        if (read.Value is { } value) return step with { Values = [value with { ResolutionSi = resolution }] };
        Offers = read.Offers;
        return Wrong(field, read.Trouble!);
    }

    private double? Resolution(LakeInWork lake) => Typed(Instrument) == "meter" ? 0.01 : lake.Plan?.Input.StripStepPh;

    private BatchStep? ReadWait(BatchStep step, DateTimeOffset now)
    {
        if (Typed(Wait) is not { } typed) return Wrong(Wait, "Nothing was typed. Write a number and a unit, such as 90 min or 6 h.");
        return WaitText.Read(typed) is { } wait && wait > TimeSpan.Zero && wait <= TimeSpan.FromDays(MostWaitDays)
            ? step with { ReadyAt = now + wait }
            : Wrong(Wait, $"Time: '{typed}' could not be read as a time to wait. Write minutes, hours or days, such as 90 min, 6 h or 2 d.");
    }

    private BatchStep? ReadSieves(BatchStep step)
    {
        var values = new List<Measured>();
        foreach (string name in BenchGuide.SieveNames)
        {
            if (Typed(Sieve + name) is not { } typed) continue;
            TypedAmount read = TypedAmount.Amount(typed);
            if (read.Value is not { SiUnit: Measured.Kilogram } value) return Wrong(Sieve + name, read.Trouble ?? $"'{typed}' is not a weight. Give grams, such as 3.2 g.");
            values.Add(value with { Name = Sieve + name, Instrument = "scale" });
        }
        if (values.Count == 0) return Wrong(Sieve + BenchGuide.SieveNames[0], "Nothing was typed. Give the grams on at least one sieve, or tap Not sieved.");
        return step with { Values = [.. values, Sum(values)] };
    }

    private BatchStep? ReadRow(BatchStep step)
    {
        if (Typed(Row) is not { } typed) return Wrong(Row, "Nothing was typed. Write each glass as its part of liquor and its absorbance, such as 1/2 0.62; 1/4 0.31");
        (IReadOnlyList<Measured> values, string? trouble) = RowText.Read(typed);
        return trouble is null ? step with { Values = values } : Wrong(Row, trouble);
    }

    /// <summary>All sieves together, as the amount that the step ends with.</summary>
    internal static Measured Sum(IReadOnlyList<Measured> sieves)
    {
        double kilograms = Math.Round(sieves.Sum(v => v.SiValue), 9);
        return new Measured("amount", string.Create(CultureInfo.InvariantCulture, $"{kilograms * 1000:0.###} g"), kilograms, Measured.Kilogram, "sum");
    }

    private static string WithUnit(string typed, string unit) => typed.All(c => char.IsDigit(c) || c is '.' or ',' or ' ') ? typed + unit : typed;

    private BatchStep? Wrong(string field, string sentence)
    {
        (Field, Trouble) = (field, sentence);
        return null;
    }
}
