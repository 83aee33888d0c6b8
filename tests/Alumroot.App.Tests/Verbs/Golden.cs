using System.Runtime.CompilerServices;

namespace Alumroot.App.Tests.Verbs;

/// <summary>A text kept in the repository, so that a person sees every change of it. ALUMROOT_WRITE_GOLDEN=1 writes it anew.</summary>
internal static class Golden
{
    public static void Same(string name, string text, [CallerFilePath] string here = "")
    {
        if (Environment.GetEnvironmentVariable("ALUMROOT_WRITE_GOLDEN") == "1")
            File.WriteAllText(Path.Combine(Path.GetDirectoryName(here)!, "Golden", name), text);
        string[] kept = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Verbs", "Golden", name));
        string[] now = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        for (int i = 0; i < Math.Max(kept.Length, now.Length); i++)
        {
            string was = i < kept.Length ? kept[i] : "(nothing)", isNow = i < now.Length ? now[i] : "(nothing)";
            Assert.True(was == isNow, $"{name} line {i + 1} was\n{was}\nand is\n{isNow}\nIf that is meant: ALUMROOT_WRITE_GOLDEN=1 ./test App, twice, and look at the change.");
        }
    }
}
