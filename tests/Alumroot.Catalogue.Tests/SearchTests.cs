using Alumroot.Catalogue.Finding;
using CsCheck;

namespace Alumroot.Catalogue.Tests;

public class SearchTests
{
    private static readonly CatalogueData Data = CatalogueData.Embedded;
    private static readonly (FoundKind Kind, string Key)[] Keys =
    [
        .. Data.Dyestuffs.Select(d => (FoundKind.Dyestuff, d.Key)), .. Data.Reagents.Select(r => (FoundKind.Reagent, r.Key)),
        .. Data.Troubles.Select(t => (FoundKind.Trouble, t.Key)), .. Data.ProcessFacts.Select(f => (FoundKind.ProcessFact, f.Key)),
        .. Data.Hazards.Select(h => (FoundKind.Hazard, h.Key)), .. Data.Waste.Select(w => (FoundKind.Waste, w.Key)),
        .. Data.Incompatibilities.Select(i => (FoundKind.Incompatibility, i.Key)), .. Data.Cautions.Select(c => (FoundKind.Caution, c.Key)),
    ];

    [Fact]
    public void Every_key_finds_itself_among_the_first() =>
        Assert.All(Keys, k => Assert.Contains(Data.Search.Find(k.Key).Hits.Take(5), h => (h.Kind, h.Key) == k));

    [Fact]
    public void One_slip_in_a_name_still_finds_it()
    {
        (FoundKind Kind, string Key, string Name)[] named =
        [
            .. Data.Dyestuffs.Select(d => (FoundKind.Dyestuff, d.Key, d.Name)),
            .. Data.Reagents.Select(r => (FoundKind.Reagent, r.Key, r.Name)),
        ];
        named = [.. named.Where(n => n.Name.Length >= 5)];
        Gen.Select(Gen.Int[0, named.Length - 1], Gen.Int[0, 1000], Gen.Int[0, 3], Gen.Char['a', 'z']).Sample((i, place, slip, letter) =>
        {
            string typed = Slip(named[i].Name, place % named[i].Name.Length, slip, letter);
            Assert.Contains(Data.Search.Find(typed).Hits.Take(5), h => (h.Kind, h.Key) == (named[i].Kind, named[i].Key));
        }, iter: 1000);
    }

    [Fact]
    public void Any_text_is_answered() =>
        Gen.String.Sample(text =>
        {
            Found found = Data.Search.Find(text);
            Assert.True(found.Hits.Count <= 40);
            Assert.Equal(found.Hits.OrderByDescending(h => h.Score), found.Hits);
            Assert.True(found.Hits.Count == 0 || found.Suggestions.Count == 0);
        });

    [Theory]
    [InlineData("madder", "madder")]
    [InlineData("MADDER", "madder")]
    [InlineData("Rubia tinctorum", "madder")]
    [InlineData("garance", "madder")]
    [InlineData("carminic acid", "cochineal")]
    [InlineData("reseda", "weld")]
    [InlineData("Épsom sält", "epsom-salt")]
    [InlineData("white bloom", "white-bloom")]
    [InlineData("nothing froths", "no-froth-caustic")]
    [InlineData("boils over", "foams-over")]
    [InlineData("gritty", "gritty")]
    [InlineData("sal soda", "soda-crystals")]
    [InlineData("KAl(SO4)2.12H2O", "potash-alum")]
    [InlineData("497-19-8", "soda-ash")]
    [InlineData("turpentin", "turpentine")]
    [InlineData("oleander", "oleander")]
    public void The_first_hit_is_what_a_maker_means(string query, string key) =>
        Assert.Equal(key, Data.Search.Find(query).Hits[0].Key);

    [Fact]
    public void Hits_are_grouped_by_kind_with_the_best_kind_first()
    {
        Found found = Data.Search.Find("potash");
        Assert.Equal(found.Hits[0].Kind, found.ByKind[0].Key);
        Assert.Equal(found.Hits.Count, found.ByKind.Sum(g => g.Count()));
        Assert.Equal(found.ByKind.Select(g => g.Key).Distinct(), found.ByKind.Select(g => g.Key));
    }

    [Fact]
    public void An_unknown_word_brings_near_words()
    {
        Found found = Data.Search.Find("koshinele");
        Assert.Empty(found.Hits);
        Assert.Contains("cochineal", found.Suggestions);
    }

    [Fact]
    public void Nothing_typed_finds_nothing()
    {
        Assert.Empty(Data.Search.Find("").Hits);
        Assert.Empty(Data.Search.Find(" ?! ").Hits);
    }

    [Fact]
    public void Folding_drops_accents_and_punctuation()
    {
        Assert.Equal("st johns wort", FoldedText.Words("St. John's  Wort"));
        Assert.Equal("garance a laque", FoldedText.Words("Garance à laqué".Replace("é", "e", StringComparison.Ordinal)));
        Assert.Equal("soude coeur strasse naive", FoldedText.Words("Soude cœur Straße naïve"));
        Assert.Equal("zolc", FoldedText.Words("żółć"));
    }

    [Theory]
    [InlineData("madder", "madder", 0)]
    [InlineData("madder", "mader", 1)]
    [InlineData("madder", "maddre", 1)]   // two neighbours swapped are one slip
    [InlineData("kitten", "sitting", 3)]  // the textbook example of edit distance
    [InlineData("", "abc", 3)]
    public void Slips_are_counted(string a, string b, int slips) => Assert.Equal(slips, TypingDistance.Between(a, b, 5));

    [Fact]
    public void Counting_slips_is_symmetric_and_bounded() =>
        Gen.Select(Gen.String[Gen.Char['a', 'c'], 0, 8], Gen.String[Gen.Char['a', 'c'], 0, 8], Gen.Int[0, 4]).Sample((a, b, most) =>
        {
            int slips = TypingDistance.Between(a, b, most);
            Assert.Equal(slips, TypingDistance.Between(b, a, most));
            Assert.Equal(Math.Min(TypingDistance.Between(a, b, 20), most + 1), slips);
        });

    private static string Slip(string name, int at, int slip, char letter) => slip switch
    {
        0 => name.Remove(at, 1),
        1 => name.Insert(at, letter.ToString()),
        2 => name.Remove(at, 1).Insert(at, letter.ToString()),
        _ => at + 1 < name.Length ? name.Remove(at, 2).Insert(at, $"{name[at + 1]}{name[at]}") : name,
    };
}
