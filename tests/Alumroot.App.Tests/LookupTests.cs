using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Verbs;

namespace Alumroot.App.Tests;

/// <summary>The handbook on the command line. The facts themselves are tested with the catalogue; here it is how they are told.</summary>
public sealed class LookupTests
{
    [Fact]
    public async Task A_dyestuff_is_told_with_class_grip_every_metal_and_source()
    {
        (int code, string data, _) = await Run("lookup", "madder");
        Assert.Equal(ExitCode.Done, code);
        foreach (string word in new[] { "Rubia tinctorum", "anthraquinone", "On aluminium", "On iron", "On copper", "On tin", "On calcium", "not known", "Source" })
            Assert.Contains(word, data, StringComparison.OrdinalIgnoreCase);
        Assert.All(data.Split('\n'), line => Assert.True(line.TrimEnd().Length <= Columns.Width, line));
    }

    [Fact]
    public async Task A_word_that_names_several_salts_gives_them_all_and_says_so()
    {
        (int code, string data, string messages) = await Run("lookup", "alum");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Potash alum", data, StringComparison.Ordinal);
        Assert.Contains("Ammonium alum", data, StringComparison.Ordinal);
        Assert.Contains("'alum' names", messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lead carbonate")]
    [InlineData("chrome alum")]
    public async Task A_refused_substance_has_a_reason_and_no_amounts(string words)
    {
        (int code, string data, _) = await Run("lookup", words, "--json");
        Assert.Equal(ExitCode.Done, code);
        JsonElement reagent = JsonDocument.Parse(data).RootElement.GetProperty("reagents").EnumerateArray().Single();
        Assert.Equal("refused", reagent.GetProperty("stance").GetString());
        Assert.NotEmpty(reagent.GetProperty("refusal_reason").GetString()!);
        Assert.Equal(JsonValueKind.Null, reagent.GetProperty("molar_mass_g_per_mol").ValueKind);
        Assert.Empty(reagent.GetProperty("solubility").EnumerateArray());
        (_, string text, _) = await Run("lookup", words);
        Assert.Contains("Will not plan", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" g for", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_is_one_document_with_units_in_the_names_and_null_for_the_unknown()
    {
        (_, string data, string messages) = await Run("lookup", "madder", "--json");
        JsonElement madder = JsonDocument.Parse(data).RootElement.GetProperty("dyestuffs")[0];
        JsonElement content = madder.GetProperty("content_percent_of_dry");
        Assert.True(content.GetProperty("low").GetDouble() < content.GetProperty("value").GetDouble());
        Assert.True(content.GetProperty("value").GetDouble() < content.GetProperty("high").GetDouble());
        Assert.Contains(madder.GetProperty("laking").EnumerateArray(), l => l.GetProperty("hue").ValueKind == JsonValueKind.Null);
        Assert.Empty(messages);
    }

    [Fact]
    public async Task Nothing_found_is_exit_1_with_a_sentence()
    {
        (int code, string data, string messages) = await Run("lookup", "zzqx");
        Assert.Equal(ExitCode.CannotBeMet, code);
        Assert.Empty(data);
        Assert.Contains("Nothing fits 'zzqx'.", messages, StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Data, string Messages)> Run(params string[] words)
    {
        using var data = new StringWriter();
        using var messages = new StringWriter();
        int code = await CommandLine.RunAsync(words, new Channels(data, messages), TestContext.Current.CancellationToken);
        return (code, data.ToString(), messages.ToString());
    }
}
