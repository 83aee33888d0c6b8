using Alumroot.App.Trials;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Verbs.Record;

/// <summary>What <c>record</c> writes of trials, by the same forms as the pages.</summary>
internal static class TrialDrafts
{
    private const string Note = "note";

    /// <summary>A trial begins: <c>record trial ADDRESS TITLE [RESULTS]</c>.</summary>
    public static RecordDraft Begin(string address, string title, string? results)
    {
        if (DesignRequest.FromAddress(address) is not { } row) return RecordDraft.Wrong($"'{address}' is not the address of a row of jars. Copy it from its page; it holds {DesignRequest.Path}?");
        if (row.Design is null) return RecordDraft.Wrong(row.Trouble ?? "The address lays out no row of jars.");
        TrialForm form = TrialForm.Read(row, field => field switch { TrialForm.Title => title, TrialForm.Results => results, _ => null }, posted: true, TimeProvider.System.GetLocalNow());
        return form.Document is { } begun ? new RecordDraft(null, begun) : RecordDraft.Wrong(string.Join(' ', form.Troubles.Values));
    }

    /// <summary>A jar was read: <c>record T-05 jar 3 yield=2.4 lab="52 38 21" within=1.5 again="28 days"</c>. Which results there are is known when the record is open.</summary>
    public static RecordDraft Jar(SubjectKey trial, string jar, IReadOnlyList<string> pairs)
    {
        var typed = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase) { [JarForm.Jar] = jar };
        foreach (string pair in pairs)
        {
            if (pair.Split('=', 2, StringSplitOptions.TrimEntries) is not [{ Length: > 0 } name, { Length: > 0 } value] || name == JarForm.Jar) return RecordDraft.Wrong($"'{pair}' is not understood. Write what was read like yield=2.4 or lab=\"52 38 21\".");
            if (!typed.TryAdd(name, value)) return RecordDraft.Wrong($"'{name}' stands twice. Write it once.");
        }
        return new RecordDraft(trial, null) { Later = studio => Read(studio, trial, typed) };
    }

    private static RecordDraft Read(StudioStore studio, SubjectKey key, Dictionary<string, string> typed)
    {
        if (studio.Trial(key) is not { } trial) return RecordDraft.Wrong($"There is no {key} in this studio. 'alumroot list' shows what there is.");
        string[] own = [JarForm.Jar, JarForm.ColourField, JarForm.Within, JarForm.Again], results = [.. trial.ResultNames];
        if (typed.Keys.FirstOrDefault(k => !own.Contains(k, StringComparer.OrdinalIgnoreCase) && !results.Contains(k, StringComparer.OrdinalIgnoreCase)) is { } other)
            return RecordDraft.Wrong($"'{other}' is not read in {key}. What is read: {string.Join(", ", results.Concat(own.Skip(1)))}.");
        string? Of(string field)
        {
            for (int i = 0; i < results.Length; i++) if (JarForm.ResultField(i) == field) return typed.GetValueOrDefault(results[i]);
            return field == Note ? null : typed.GetValueOrDefault(field);
        }
        var form = JarForm.Read(trial, Of, TimeProvider.System.GetLocalNow());
        return form.Document is { } read ? new RecordDraft(key, read) : RecordDraft.Wrong(form.Troubles.Count > 0 ? string.Join(' ', form.Troubles.Values) : $"Nothing was read of jar {typed[JarForm.Jar]}. Write it like yield=2.4 or lab=\"52 38 21\".");
    }
}
