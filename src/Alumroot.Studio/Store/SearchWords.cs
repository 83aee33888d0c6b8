using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Store;

/// <summary>The words by which a subject is found, and the question put to the index.</summary>
internal static class SearchWords
{
    private const int MostWords = 12;

    /// <summary>Number, documents and every text in the entries of a subject, each once. Percent signs of addresses are undone first.</summary>
    public static string Of(IReadOnlyCollection<Entry> entries) =>
        string.Join(' ', entries.Select(e => e.Subject.ToString()).Concat(entries.Select(e => e.Kind.Name)).Concat(entries.SelectMany(e => e.Payload.Texts()).Select(Uri.UnescapeDataString)).Distinct());

    /// <summary>Class and stage as words of their own, so that a list can be narrowed by the index itself.</summary>
    public static string Marks(SubjectRow row) => $"{ClassMark(row.Class)} {StageMark(row.Stage)}";

    /// <summary>Subjects that hold, for each word typed, a word beginning so; null when nothing was typed that could be found.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="classes">Only these classes.</param>
    /// <param name="stages">Only these stages; none for all.</param>
    public static string? Question(string typed, IReadOnlyCollection<string> classes, IReadOnlyCollection<string> stages)
    {
        string[] words =
        [
            .. typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Take(MostWords)
                .Where(w => w.Any(char.IsLetterOrDigit)).Select(w => $"words : \"{w.Replace("\"", "\"\"", StringComparison.Ordinal)}\"*"),
        ];
        if (words.Length == 0) return null;
        string[] narrowed = stages.Count > 0 ? [Any(classes.Select(ClassMark)), Any(stages.Select(StageMark))] : [Any(classes.Select(ClassMark))];
        return string.Join(" AND ", [.. words, .. narrowed]);
    }

    private static string Any(IEnumerable<string> marks) => $"marks : ({string.Join(" OR ", marks)})";

    private static string ClassMark(string word) => "class" + Letters(word);

    private static string StageMark(string word) => "stage" + Letters(word);

    private static string Letters(string word) => string.Concat(word.Where(char.IsAsciiLetter));
}
