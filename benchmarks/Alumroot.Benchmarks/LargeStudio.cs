using Alumroot.Quantities;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.Benchmarks;

/// <summary>A studio of many years, all invented and the same for every run: ten entries for each batch.</summary>
internal static class LargeStudio
{
    /// <summary>Entries for each batch.</summary>
    public const int EntriesEach = 10;

    /// <summary>A word that stands in the notes of one batch in five thousand.</summary>
    public const string RareWord = "quillstone";

    /// <summary>A word that stands in the notes of every other batch.</summary>
    public const string CommonWord = "cloudy";

    private const int BatchesAtOnce = 2500, BatchesAYear = 10_000, FirstYear = 2017, Words = 3000;

    private static readonly string[] Plants = ["Madder", "Weld", "Buckthorn berries", "Dyer's broom", "Logwood", "Walnut hulls", "Onion skins", "Alder bark"];

    private static readonly string[] Salts = ["Potash alum", "Ammonium alum", "Aluminium sulfate", "Iron(II) sulfate"];

    /// <summary>Fills an empty studio.</summary>
    public static void Fill(StudioStore studio, int batches)
    {
        var chance = new Random(20261126);
        string[] words = [.. Enumerable.Range(0, Words).Select(n => Word(new Random(n)))];
        for (int from = 0; from < batches; from += BatchesAtOnce)
            studio.AppendAll([.. Enumerable.Range(from, Math.Min(BatchesAtOnce, batches - from)).SelectMany(n => Batch(n, chance, words))]);
    }

    private static IEnumerable<Entry> Batch(int number, Random chance, string[] words)
    {
        (int year, int count) = (FirstYear + (number / BatchesAYear), 1 + (number % BatchesAYear));
        SubjectKey key = SubjectKey.Batch(year, count);
        DateTimeOffset at = new DateTimeOffset(year, 1, 2, 8, 0, 0, TimeSpan.FromHours(1)).AddMinutes((count * 50) + chance.Next(50)).AddMilliseconds(chance.Next(60_000));
        string plant = Plants[chance.Next(Plants.Length)], salt = Salts[chance.Next(Salts.Length)];
        string address = $"/lakes/plan?dyestuff={Uri.EscapeDataString(plant)}&dry={chance.Next(20, 900)}%20g&salt={Uri.EscapeDataString(salt)}&to-ph=6.5";
        var documents = new List<StudioDocument> { new BatchPlanned($"{plant} with {salt}", address, number, "0.1.0") { Dyestuff = plant, Salt = salt, Note = Note() } };
        StepKind[] steps = [StepKind.Extract, StepKind.Salt, StepKind.Alkali, StepKind.Alkali, StepKind.Alkali, StepKind.Wash, StepKind.Filter, StepKind.Dry, StepKind.Grind];
        // One batch in twenty is given up on its way, one in ten is still under way.
        int reached = chance.Next(20) is 0 or 1 ? chance.Next(2, steps.Length) : steps.Length;
        foreach (StepKind step in steps.Take(reached))
        {
            double grams = Math.Round(chance.NextDouble() * 60, 1);
            documents.Add(new BatchStep(step) { Values = [Measured.Of("amount", FormattableString.Invariant($"{grams} g"), Mass.FromGrams(grams), "scale")], Note = chance.Next(3) == 0 ? Note() : null });
        }
        if (reached < steps.Length && chance.Next(2) == 0) documents.Add(new BatchGivenUp(Note()));
        while (documents.Count < EntriesEach) documents.Add(new Noted { Note = Note() });
        return documents.Select((d, i) => d.ToEntry(EntryId.TryRead(FormattableString.Invariant($"large-{number:000000}-{i:00}"))!.Value, key, at.AddHours(3 * i)));

        string Note()
        {
            string said = string.Join(' ', Enumerable.Range(0, 6).Select(_ => words[(int)(words.Length * Math.Pow(chance.NextDouble(), 3))]));
            return $"{said}{(chance.Next(8) == 0 ? " " + CommonWord : "")}{(chance.Next(25_000) == 0 ? " " + RareWord : "")}";
        }
    }

    private static string Word(Random chance)
    {
        string[] parts = ["ba", "ke", "lo", "mi", "nu", "ra", "se", "ti", "vo", "dal", "fen", "gor", "hil", "jum"];
        return string.Concat(Enumerable.Range(0, chance.Next(2, 5)).Select(_ => parts[chance.Next(parts.Length)]));
    }
}
