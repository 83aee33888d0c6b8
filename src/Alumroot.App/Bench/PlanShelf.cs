using System.Collections.Concurrent;
using System.Globalization;
using Alumroot.App.Requests;
using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Bench;

/// <summary>Plans of batches in work, kept so that a page does not reckon the same plan again. A plan follows from its address alone, so nothing here can grow stale. May be used from several threads.</summary>
public sealed class PlanShelf
{
    private const int Most = 256;

    private readonly ConcurrentDictionary<string, Lazy<PlanAnswer>> _answers = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<AssimilationOutcome>> _outcomes = new(StringComparer.Ordinal);

    /// <summary>The answer to the plan at an address.</summary>
    /// <param name="address">As a batch keeps it.</param>
    public PlanAnswer Of(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        if (_answers.Count > Most) _answers.Clear();
        return _answers.GetOrAdd(address, a => new Lazy<PlanAnswer>(() => PlanMaker.Answer(PlanRequest.FromAddress(a) ?? PlanRequest.Empty))).Value;
    }

    /// <summary>What the readings of a batch say.</summary>
    /// <param name="address">Its plan's address.</param>
    /// <param name="input">The plan as weighed.</param>
    /// <param name="events">What was poured and read.</param>
    /// <param name="place">The bowls that stand about.</param>
    public AssimilationOutcome Assimilated(string address, LakePlanInput input, IReadOnlyList<BenchEvent> events, Workplace place)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(events);
        ArgumentNullException.ThrowIfNull(place);
        // The address fixes all that is not weighed at the bench; what is weighed is in the key.
        string key = string.Join('|', [address, Text(input.DryDyestuff?.Grams), Text(input.LiquorPh?.Value), .. input.Salts.Select(s => Text(s.Amount.Grams)), .. events.Select(Text), .. place.Bowls.Select(b => $"bowl {Text(b.Grams)}")]);
        if (_outcomes.Count > Most) _outcomes.Clear();
        return _outcomes.GetOrAdd(key, _ => new Lazy<AssimilationOutcome>(() => Assimilator.Assimilate(input, events, place))).Value;
    }

    private static string Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    private static string Text(BenchEvent happened) => happened switch
    {
        BenchEvent.AlkaliAdded a => $"alkali {Text(a.Units)}",
        BenchEvent.SaltAdded s => $"salt {Text(s.Amount.Grams)}",
        BenchEvent.PhRead p => $"ph {Text(p.Ph.Value)} {Text(p.StepPh)} {p.Instrument}",
        BenchEvent.PhReadBetween b => $"between {Text(b.Low.Value)} {Text(b.High.Value)} {b.Instrument}",
        BenchEvent.ConductivityRead c => $"conductivity {Text(c.Conductivity.MicrosiemensPerCentimetre)}",
        BenchEvent.TemperatureRead t => $"temperature {Text(t.Temperature.Celsius)}",
        _ => throw new InvalidOperationException($"{happened.GetType().Name} has no text to be kept by"),
    };
}
