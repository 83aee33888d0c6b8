using Alumroot.App.Parts;
using Alumroot.App.Words;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Requests;

/// <summary>What came of one field: a trouble with ways out, or a remark on how it was read.</summary>
/// <param name="Field">Name of the field.</param>
/// <param name="Trouble">What is wrong, or null.</param>
/// <param name="Understood">How it was read when that is worth saying, or null.</param>
/// <param name="Offers">Texts that would have one meaning, likeliest first.</param>
public sealed record FieldReading(string Field, string? Trouble, string? Understood, IReadOnlyList<string> Offers);

/// <summary>Reads the fields of a request and keeps what has to be said about each.</summary>
internal sealed class FieldReader(PlanRequest request)
{
    private readonly Dictionary<string, FieldReading> _readings = new(StringComparer.Ordinal);

    internal IReadOnlyDictionary<string, FieldReading> Readings => _readings;

    internal IReadOnlyList<FieldTrouble> Troubles => [.. PlanFields.All.Where(f => _readings.TryGetValue(f, out FieldReading? r) && r.Trouble is not null).Select(f => new FieldTrouble(f, _readings[f].Trouble!))];

    internal string? Text(string field) => request[field];

    internal T? Optional<T>(string field, Func<string, Parsed<T>> read) where T : struct
    {
        if (request[field] is not { } typed) return null;
        Parsed<T> parsed = read(typed);
        switch (parsed)
        {
            case Parsed<T>.Understood u:
                if (u.Restated is not null) _readings[field] = new FieldReading(field, null, ReadingWords.Restated(typed, u.Restated), []);
                return u.Value;
            case Parsed<T>.TwoReadings two:
                _readings[field] = new FieldReading(field, ReadingWords.Trouble(field, two), null, [.. two.Readings.Select(r => r.Rewritten)]);
                return null;
            case Parsed<T>.NotUnderstood not:
                _readings[field] = new FieldReading(field, ReadingWords.Trouble(field, not), null, [.. not.Offers.Select(r => r.Rewritten)]);
                return null;
            default:
                return null;
        }
    }

    internal bool HasTrouble(string field) => _readings.TryGetValue(field, out FieldReading? r) && r.Trouble is not null;

    internal void Trouble(string field, string sentence, params string[] offers) => _readings.TryAdd(field, new FieldReading(field, sentence, null, offers));
}
