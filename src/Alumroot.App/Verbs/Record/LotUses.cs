using Alumroot.App.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs.Record;

/// <summary>The lots that a step took from: <c>lot-7</c> for the step's whole amount, or <c>lot-7 20 g</c> for a part of it.</summary>
/// <param name="whole">The step's amount; null when it has none.</param>
internal sealed class LotUses(Measured? whole)
{
    private readonly List<LotUse> _all = [];

    public IReadOnlyList<LotUse> All => _all;

    /// <summary>Adds one as typed; gives back why not, or null.</summary>
    public string? Add(string typed)
    {
        string[] parts = typed.Trim().Split(' ', 2, StringSplitOptions.TrimEntries);
        if (SubjectKey.TryRead(parts[0]) is not { Class: SubjectClass.Lot } key) return $"'--use {typed}' is not the number of a lot. Write it like lot-7, or with its amount like \"lot-7 20 g\".";
        TypedAmount? part = parts.Length > 1 ? TypedAmount.Amount(parts[1]) : null;
        if (part?.Trouble is { } trouble) return trouble;
        if ((part?.Value ?? whole) is not { } taken) return $"'--use {typed}' needs the amount that was taken. Write it after the step, like added \"3.0 g\", or after the lot, like \"{key} 20 g\".";
        if (part is null && _all.Count > 0) return $"'--use {typed}' stands beside another lot, so each needs its own amount. Write it like \"{key} 20 g\".";
        if (_all.Any(u => u.Lot == key.ToString())) return $"'--use {typed}' names {key} a second time. Write the sum once.";
        _all.Add(new LotUse(key.ToString(), taken));
        return null;
    }
}
