using System.Net;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Alumroot.Architecture.Tests;

/// <summary>Places, tabs and verbs bear the trade's own words. The words below stand on neighbouring programs and are not used as labels.</summary>
public partial class WordTests
{
    private static readonly string[] Forbidden = ["dashboard", "recipes", "inventory", "library", "palette", "mixer", "toolbox", "wizard", "projects", "board", "feed"];

    // A label is short; a sentence may use any word of the language.
    private const int LongestLabelWords = 3;

    [Fact]
    public void No_label_of_a_page_is_a_forbidden_word() => None(
        Repository.Files("src", ".razor").SelectMany(f => Labels(File.ReadAllText(f)).Where(IsForbidden).Select(l => $"{Repository.Relative(f)}: {l}")));

    [Fact]
    public void No_short_text_of_a_resource_file_is_a_forbidden_word() => None(
        Repository.Files("src", ".resx").SelectMany(f => XDocument.Load(f).Descendants("value").Select(v => v.Value).Where(IsForbidden).Select(l => $"{Repository.Relative(f)}: {l}")));

    [Fact]
    public void No_short_text_of_the_application_is_a_forbidden_word() => None(
        MetadataScan.Texts(Rooms.App).Where(t => Forbidden.Contains(t.Trim(' ', '/', '"').ToLowerInvariant())));

    [Fact]
    public void No_address_of_a_page_has_a_forbidden_part() => None(
        Repository.Files("src", ".razor").SelectMany(f => Route().Matches(File.ReadAllText(f)).SelectMany(m => m.Groups[1].Value.Split('/')).Where(IsForbidden).Select(l => $"{Repository.Relative(f)}: {l}")));

    [Theory]
    [InlineData("<h1 class=\"x\">Your Dashboard</h1>", true)]
    [InlineData("<a href=\"/x\">Palette</a>", true)]
    [InlineData("<TextField Label=\"Mixer\" />", true)]
    [InlineData("<button>Brew-anything wizard</button>", true)]
    [InlineData("<p>Published recipes often forget the hydrate of the salt.</p>", false)]
    [InlineData("<h2>Cardboard box</h2>", false)]
    [InlineData("<h2>Shelf</h2>", false)]
    public void The_rule_sees_labels_and_leaves_sentences_alone(string markup, bool found) =>
        Assert.Equal(found, Labels(markup).Any(IsForbidden));

    private static IEnumerable<string> Labels(string markup) =>
        Element().Matches(markup).Select(m => Tag().Replace(m.Groups[2].Value, " "))
            .Concat(Attribute().Matches(markup).Select(m => m.Groups[1].Value))
            .Select(WebUtility.HtmlDecode).OfType<string>();

    private static bool IsForbidden(string label)
    {
        string[] words = [.. Word().Matches(label).Select(m => m.Value.ToLowerInvariant())];
        return words.Length <= LongestLabelWords && words.Any(w => Forbidden.Contains(w) || w.StartsWith("brew", StringComparison.Ordinal));
    }

    private static void None(IEnumerable<string> found)
    {
        string[] all = [.. found];
        Assert.True(all.Length == 0, string.Join("\n", all));
    }

    [GeneratedRegex(@"<(h[1-6]|a|button|label|legend|summary|th|title|PageTitle|option)\b[^>]*>(.*?)</\1>", RegexOptions.Singleline)]
    private static partial Regex Element();

    [GeneratedRegex(@"\b(?:[Ll]abel|aria-label|[Tt]itle|Text|Name|Heading|Legend|Summary)=""([^""@]+)""")]
    private static partial Regex Attribute();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"@page ""([^""]*)""")]
    private static partial Regex Route();

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Word();
}
