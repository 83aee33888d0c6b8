using System.CommandLine;
using System.Net;
using System.Net.Sockets;
using Alumroot.App.Output;
using Alumroot.App.Verbs;

namespace Alumroot.App.Tests;

/// <summary>How the command line answers words it knows and words it does not. Exit codes are this program's public contract.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("srve", "There is no verb 'srve'. The nearest is 'serve'")]
    [InlineData("zzzzzzzz", "There is no verb 'zzzzzzzz'. The verbs are")]
    [InlineData("serve --prot 1", "no option '--prot'. The nearest is '--port'")]
    [InlineData("serve --port", "'--port' needs a value after it: N is the port")]
    [InlineData("serve --port abc", "'abc' cannot be read as the value of '--port'")]
    [InlineData("serve --port 70000", "'--port 70000' is outside 0 to 65535")]
    [InlineData("--port abc", "'abc' cannot be read as the value of '--port'")]
    [InlineData("serve twice", "'twice' was not expected after 'serve'")]
    [InlineData("serve --demo --studio here", "'--studio' and '--demo' name two studios")]
    [InlineData("film x.csv --thickness 1,5 --over 0.8", "'1,5' after '--thickness' has a comma")]
    [InlineData("film x.csv --thickness thick --over 0.8", "'thick' after '--thickness' is no number")]
    [InlineData("match x.csv --aim 52 38 21 --k1 0,04", "'0,04' after '--k1' has a comma")]
    [InlineData("lokup madder", "The nearest is 'lookup'")]
    [InlineData("lookup", "'lookup' needs WORDS after it: a plant")]
    [InlineData("help srve", "There is no verb 'srve'")]
    public async Task A_mistake_is_exit_2_and_the_message_points_at_the_word(string line, string expected)
    {
        (int code, string data, string messages) = await Run(line);
        Assert.Equal(ExitCode.InputWrong, code);
        Assert.Contains(expected, messages, StringComparison.Ordinal);
        Assert.Empty(data);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("help")]
    [InlineData("serve --help")]
    [InlineData("lookup --help")]
    [InlineData("record --help")]
    [InlineData("list --help")]
    [InlineData("show --help")]
    [InlineData("import --help")]
    [InlineData("backup --help")]
    [InlineData("help serve")]
    public async Task Help_is_one_screen_with_three_examples(string line)
    {
        (int code, string data, string messages) = await Run(line);
        string[] lines = data.Split('\n');
        Assert.Equal(ExitCode.Done, code);
        Assert.Empty(messages);
        Assert.InRange(lines.Length, 8, 40);
        Assert.All(lines, l => Assert.True(l.TrimEnd().Length <= Columns.Width, l));
        Assert.Equal(3, lines.Count(l => l.StartsWith("  alumroot ", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Every_verb_has_three_examples_that_parse()
    {
        foreach (Verb verb in AllVerbs.Build(new Channels(TextWriter.Null, TextWriter.Null)))
        {
            Assert.Equal(3, verb.Examples.Count);
            foreach (string example in verb.Examples)
            {
                Assert.StartsWith($"alumroot {verb.Name}", example, StringComparison.Ordinal);
                Assert.Null(UsageWords.FirstMistake(verb, verb.Parse(example[$"alumroot {verb.Name}".Length..])));
            }
        }
        (int code, string data, _) = await Run("--version");
        Assert.Equal(ExitCode.Done, code);
        Assert.Matches(@"^alumroot \d+\.\d+\.\d+", data);
    }

    [Fact]
    public void No_number_is_read_with_a_comma()
    {
        // A general parser would take the comma for a thousands mark and make 15 of 1,5.
        Option[] numbers = [.. AllVerbs.Build(new Channels(TextWriter.Null, TextWriter.Null)).SelectMany(v => v.Options).Where(o => (Nullable.GetUnderlyingType(o.ValueType) ?? o.ValueType) is { } type && (type == typeof(double) || type == typeof(decimal) || type == typeof(float) || type == typeof(int) || type == typeof(long)))];
        Assert.True(numbers.Length > 5);
        Assert.All(numbers, o => Assert.NotEmpty(new Command("any") { o }.Parse([o.Name, "1,5"]).Errors));
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_exit_3()
    {
        string file = Path.GetTempFileName();
        (int code, _, string messages) = await Run("serve", "--studio", Path.Combine(file, "studio"));
        File.Delete(file);
        Assert.Equal(ExitCode.RecordTrouble, code);
        Assert.Contains("cannot be written", messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_exit_1_and_says_what_to_do()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        int port = ((IPEndPoint)taken.LocalEndpoint).Port;
        string folder = Path.Combine(Path.GetTempPath(), $"alumroot-port-{Guid.NewGuid():N}");
        (int code, string data, string messages) = await Run("serve", "--port", $"{port}", "--studio", folder);
        Directory.Delete(folder, recursive: true);
        Assert.Equal(ExitCode.CannotBeMet, code);
        Assert.Empty(data);
        Assert.StartsWith($"Port {port} is taken by another program.", messages, StringComparison.Ordinal);
    }

    private static Task<(int Code, string Data, string Messages)> Run(string line) => Run(line.Split(' '));

    private static async Task<(int Code, string Data, string Messages)> Run(params string[] words)
    {
        using var data = new StringWriter();
        using var messages = new StringWriter();
        int code = await CommandLine.RunAsync(words, new Channels(data, messages), TestContext.Current.CancellationToken);
        return (code, data.ToString(), messages.ToString());
    }
}
