using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Recording;

/// <summary>A lot that is to come on the shelf: what was typed, and what is wrong with it.</summary>
public sealed class ShelfForm
{
    /// <summary>Names of the fields.</summary>
    public const string Kind = "kind", Title = "title", Amount = "amount", Cost = "cost", Came = "came", Source = "source", PlanName = "plan-name", BakedBefore = "baked-before", BakedAfter = "baked-after", Note = "note";

    private const int Longest = 200;
    private readonly Dictionary<string, string> _troubles = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Troubles => _troubles;

    /// <summary>The lot; null when something is wrong.</summary>
    public LotBought? Document { get; private set; }

    /// <summary>Reads the form, or the address that asks again.</summary>
    /// <param name="typed">Text by field name; null for a blank one.</param>
    public static ShelfForm Read(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var form = new ShelfForm();
        form.ReadFields(name => typed(name) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim()[..Math.Min(text.Trim().Length, Longest)] : null);
        return form;
    }

    private void ReadFields(Func<string, string?> typed)
    {
        if (!Enum.TryParse(typed(Kind), ignoreCase: true, out LotClass kind) || !Enum.IsDefined(kind)) _troubles[Kind] = "What it is: choose one of the list.";
        if (typed(Title) is null) _troubles[Title] = "Name: nothing is typed. Write what the packet says.";
        Measured? amount = Weight(typed(Amount), Amount, "How much came", needed: true), before = Weight(typed(BakedBefore), BakedBefore, "Before baking", needed: false), after = Weight(typed(BakedAfter), BakedAfter, "After baking", needed: false);
        if (before is not null != after is not null) _troubles[before is null ? BakedBefore : BakedAfter] = "Home-baked soda: both weights are needed, or neither.";
        else if (before is not null && after is not null && after.SiValue >= before.SiValue) _troubles[BakedAfter] = "After baking: the powder must weigh less than before. Weigh again, or change the two about.";
        DateOnly? came = null;
        if (typed(Came) is { } day)
        {
            came = LookAgain.Day(day);
            if (came is null) _troubles[Came] = $"Day: '{day}' could not be read. Write it like 2026-11-14 or 14 Nov 2026.";
        }
        string? name = typed(PlanName) ?? (before is not null ? "soda-ash" : null);
        if (name is not null && kind is LotClass.Salt or LotClass.Alkali && SubstanceShelf.Find(name!.Split('@', '+')[0]) is null)
            _troubles[PlanName] = $"What it is for the plan: '{name}' is not known. Write a name of the handbook, such as potash-alum, potash-alum@98% or soda-ash.";
        if (name is not null && kind == LotClass.Dyestuff && CatalogueData.Embedded.FindDyestuff(name) is null)
            _troubles[PlanName] = $"What it is for the plan: '{name}' is no dyestuff of the handbook. Write its key, such as madder, or leave it empty.";
        if (_troubles.Count > 0) return;
        Document = new LotBought(kind, typed(Title)!, amount!) { Cost = typed(Cost), CameOn = came, Source = typed(Source), PlanName = name, BakedFrom = before, BakedTo = after, Note = typed(Note) };
    }

    private Measured? Weight(string? typed, string field, string label, bool needed)
    {
        if (typed is null)
        {
            if (needed) _troubles[field] = $"{label}: nothing is typed. Write a number and a unit, such as 500 g.";
            return null;
        }
        TypedAmount read = TypedAmount.Amount(typed);
        if (read.Value is { SiValue: > 0 } value) return value;
        _troubles[field] = read.Value is null ? read.Trouble!.Replace("Amount:", label + ":", StringComparison.Ordinal) : $"{label}: it must be more than nothing.";
        return null;
    }
}
