using Alumroot.App.Output;
using Alumroot.App.Verbs;

namespace Alumroot.Docs.Tests;

/// <summary>Every command that the README and the guide show is run, and must end and say what is shown.</summary>
public sealed class ShownCommandTests
{
    private static readonly Lazy<IReadOnlyList<ShownCommand>> Commands = new(() =>
        [.. Documents.In("docs/guide").Append("README.md").SelectMany(d => ShownCommand.Of(d, Documents.Text(d)))]);

    public static TheoryData<int> All => [.. Enumerable.Range(0, Commands.Value.Count)];

    [Theory]
    [MemberData(nameof(All))]
    public async Task What_is_shown_is_what_it_says(int command)
    {
        ShownCommand shown = Commands.Value[command];
        // Files in the documents are named from the root, where a reader stands.
        Environment.CurrentDirectory = Documents.Root;
        using var said = new StringWriter();
        int code = await CommandLine.RunAsync(shown.Words, new Channels(said, said), TestContext.Current.CancellationToken);
        Assert.True(code == shown.ExitCode, $"{shown.Place} ended with {code}:\n{said}");
        string? missing = shown.Missing(said.ToString());
        Assert.True(missing is null, $"{shown.Place} shows\n{missing}\nand the command says\n{said}");
    }

    [Fact]
    public void The_readme_and_the_guide_show_commands()
    {
        Assert.Contains(Commands.Value, c => c.Place.StartsWith("README.md", StringComparison.Ordinal));
        Assert.Contains(Commands.Value, c => c.Place.StartsWith("docs/guide/first-lake.md", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a\nb", "a\nb", true)]
    [InlineData("a\n...", "a\nb\nc", true)]
    [InlineData("...\nc", "a\nb\nc", true)]
    [InlineData("a\n...\nc\n...", "a\nb\nc\nd", true)]
    [InlineData("ph ... g", "ph 6 g", true)]
    [InlineData("a", "a\nb", false)]
    [InlineData("b", "a\nb", false)]
    [InlineData("...\nd", "a\nb", false)]
    [InlineData("...\nb\na", "a\nb\nb", false)]
    [InlineData("ph ... g", "ph 6 mL", false)]
    public void Dots_stand_for_anything_and_other_lines_for_themselves(string shown, string said, bool fits) =>
        Assert.Equal(fits, new ShownCommand("here", [], 0, shown.Split('\n')).Missing(said) is null);

    [Fact]
    public void A_block_is_read_with_its_commands_words_and_endings()
    {
        ShownCommand[] read = [.. ShownCommand.Of("x.md", "```console\n$ alumroot lookup \"white bloom\" \\\n   --json\nsaid\n$ alumroot plan   # ends with 2\n```\n$ alumroot serve\n")];
        Assert.Equal(2, read.Length);
        Assert.Equal(["lookup", "white bloom", "--json"], read[0].Words);
        Assert.Equal(["said"], read[0].Output);
        Assert.Equal(["plan"], read[1].Words);
        Assert.Equal((2, "x.md line 5"), (read[1].ExitCode, read[1].Place));
    }
}
