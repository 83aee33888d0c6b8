using System.Collections.Concurrent;
using Alumroot.App.Requests;

namespace Alumroot.App.Bench;

/// <summary>Plans of batches in work, kept so that a page does not reckon the same plan again. A plan follows from its address alone, so nothing here can grow stale. May be used from several threads.</summary>
public sealed class PlanShelf
{
    private const int Most = 256;

    private readonly ConcurrentDictionary<string, Lazy<PlanAnswer>> _answers = new(StringComparer.Ordinal);

    /// <summary>The answer to the plan at an address.</summary>
    /// <param name="address">As a batch keeps it.</param>
    public PlanAnswer Of(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        if (_answers.Count > Most) _answers.Clear();
        return _answers.GetOrAdd(address, a => new Lazy<PlanAnswer>(() => PlanMaker.Answer(PlanRequest.FromAddress(a) ?? PlanRequest.Empty))).Value;
    }
}
