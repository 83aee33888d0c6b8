using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Studio;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Trials;

/// <summary>A jar that the code on its label names, such as <c>T-05/3</c>.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Jar">The jar.</param>
/// <param name="Settings">What is set in it, in words.</param>
public sealed record LabelledJar(SubjectKey Trial, JarState Jar, string Settings)
{
    /// <summary>What the code of a jar's label says.</summary>
    public static string Code(SubjectKey trial, int order) => string.Create(CultureInfo.InvariantCulture, $"{trial}/{order}");

    /// <summary>The jar of a code; null when the text is none, or there is no such jar.</summary>
    public static LabelledJar? Of(StudioStore store, string? typed)
    {
        ArgumentNullException.ThrowIfNull(store);
        return typed?.Trim().Split('/') is [var key, var number] && SubjectKey.TryRead(key) is { Class: SubjectClass.Trial } subject && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int order)
            && store.Trial(subject) is { Begun: { } begun } trial && trial.Jars.FirstOrDefault(j => j.Jar.Order == order) is { } jar ? new LabelledJar(subject, jar, KeptTrialWords.Settings(begun, jar.Jar)) : null;
    }
}
