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
