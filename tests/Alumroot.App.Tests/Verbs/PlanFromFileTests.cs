using Alumroot.App.Output;

namespace Alumroot.App.Tests.Verbs;

/// <summary>A plan asked for by a JSON file or by standard input.</summary>
public sealed class PlanFromFileTests : IDisposable
{
    private readonly string _file = Path.GetTempFileName();

    public void Dispose() => File.Delete(_file);

    [Fact]
    public async Task A_file_means_the_same_as_the_words()
    {
        Command file = await From("""{ "salt": "potash-alum", "salt_amount": "20 g", "water": "1 L", "alkali": "soda-ash", "to-ph": 6.5, "vessel": null }""", "--csv");
        Command words = await Command.Of("plan --salt potash-alum --salt-amount 20g --water 1L --alkali soda-ash --to-ph 6.5 --csv");
        Assert.Equal(ExitCode.Done, file.Code);
        Assert.Equal(words.Data, file.Data);
    }

    [Fact]
    public async Task A_word_on_the_line_goes_before_the_file()
    {
        Command run = await From("""{ "salt": "potash-alum", "salt_amount": "20 g", "water": "1 L", "alkali": "soda-ash" }""", "--alkali", "potash", "--quiet");
        Assert.Contains("  potash  ", run.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("soda ash", run.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "sallt": "potash-alum" }""", "no field 'sallt'. The nearest is 'salt'")]
    [InlineData("""{ "salt": ["potash-alum"] }""", "'salt' holds a list or an object")]
    [InlineData("""{ "salt": """, "is not JSON that can be read: line 1")]
    [InlineData("""[1, 2]""", "not an object with the plan's fields")]
    [InlineData("", "is not JSON that can be read")]
    public async Task A_file_that_cannot_be_used_is_exit_2(string json, string expected)
    {
        Command run = await From(json);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
        Assert.Empty(run.Data);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_exit_2()
    {
        Command run = await Command.Of("plan --from /nowhere/at-all.json");
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains("'/nowhere/at-all.json' could not be read", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dash_reads_standard_input()
    {
        TextReader before = Console.In;
        try
        {
            Console.SetIn(new StringReader("""{ "salt": "potash-alum", "salt-amount": "20 g", "water": "1 L", "alkali": "soda-ash", "all-down": true }"""));
            Command run = await Command.Of("plan --from - --quiet");
            Assert.Equal(ExitCode.Done, run.Code);
            Assert.Contains("until all the metal is", run.Data, StringComparison.Ordinal);
        }
        finally
        {
            Console.SetIn(before);
        }
    }

    private async Task<Command> From(string json, params string[] words)
    {
        await File.WriteAllTextAsync(_file, json, TestContext.Current.CancellationToken);
        return await Command.Of(["plan", "--from", _file, .. words]);
    }
}
