using System.Net;
using Alumroot.App.Hosting;
using Alumroot.App.Studio;
using Alumroot.Catalogue;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.App.Tests;

/// <summary>Every page of the handbook is asked for once over real Kestrel.</summary>
public sealed class HandbookPageTests : IAsyncLifetime
{
    private readonly DemoStudio _studio = DemoStudio.Open(TimeProvider.System);
    private readonly WebApplication _app;
    private readonly HttpClient _client = new();

    public HandbookPageTests() => _app = AppHost.Build(new AppOptions(), _studio.Store);

    public async ValueTask InitializeAsync() => await _app.StartAsync(TestContext.Current.CancellationToken);

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
        _studio.Dispose();
    }

    [Fact]
    public async Task Every_dyestuff_has_a_page_that_answers_for_aluminium()
    {
        foreach (Dyestuff dyestuff in CatalogueData.Embedded.Dyestuffs)
        {
            string page = await Text($"/handbook/dyestuffs/{dyestuff.Key}", HttpStatusCode.OK);
            Assert.Contains("aluminium", page, StringComparison.Ordinal);
            if (dyestuff.Stance == Stance.Refused) Assert.Contains("Will not plan:", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Every_reagent_has_a_page_and_a_refused_one_has_no_amounts()
    {
        foreach (Reagent reagent in CatalogueData.Embedded.Reagents)
        {
            string page = await Text($"/handbook/reagents/{reagent.Key}", HttpStatusCode.OK);
            bool refused = reagent.Stance == Stance.Refused;
            Assert.Equal(refused, page.Contains("Will not plan:", StringComparison.Ordinal));
            Assert.Equal(refused, !page.Contains("Mass of a mole", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("/handbook/dyestuffs/maddr", "Madder")]
    [InlineData("/handbook/reagents/potash-allum", "Potash alum")]
    public async Task A_key_that_is_not_there_is_404_and_offers_the_nearest(string path, string near) =>
        Assert.Contains(near, await Text(path, HttpStatusCode.NotFound), StringComparison.Ordinal);

    [Theory]
    [InlineData("/find?q=maddr", "Madder")]
    [InlineData("/find?q=white%20bloom", "/handbook/trouble#")]
    [InlineData("/find?q=zzqx", "Nothing fits")]
    [InlineData("/find?q=%3Cscript%3E", "&lt;script&gt;")]
    [InlineData("/handbook/trouble", "How to tell")]
    [InlineData("/handbook/rules", "Source:")]
    [InlineData("/handbook/safety", "Must not meet")]
    [InlineData("/handbook/sources", "bipm_si_brochure_9")]
    public async Task A_page_says_what_it_is_for(string path, string words) =>
        Assert.Contains(words, await Text(path, HttpStatusCode.OK), StringComparison.Ordinal);

    private async Task<string> Text(string path, HttpStatusCode expected)
    {
        using HttpResponseMessage answer = await _client.GetAsync(new Uri(_app.Urls.First() + path), TestContext.Current.CancellationToken);
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == expected, $"{path}: {answer.StatusCode}");
        return text;
    }
}
