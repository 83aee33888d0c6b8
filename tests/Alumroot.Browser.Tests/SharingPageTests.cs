using Alumroot.App.Hosting;
using Alumroot.App.Sharing;
using Alumroot.App.Studio;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.Browser.Tests;

/// <summary>The page of a studio that is shared, with its code, by the rules of the house.</summary>
public sealed class SharingPageTests(Studio studio)
{
    [Fact]
    public async Task The_code_and_the_addresses_keep_the_house_rules()
    {
        using DemoStudio demo = DemoStudio.Open(TimeProvider.System);
        await using WebApplication app = AppHost.Build(new AppOptions { Demo = true, Share = Passphrase.Of("four plain words here") }, demo.Store);
        await app.StartAsync(TestContext.Current.CancellationToken);
        string page = $"http://localhost:{new Uri(app.Urls.First()).Port}/studio/sharing";
        foreach ((int width, bool dark) in new[] { (360, false), (1280, false), (360, true) })
        {
            await using Visit visit = await studio.OpenAsync("blank", new View(width, 800) { Dark = dark });
            await visit.Page.GotoAsync(page);
            Assert.True(await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Img, new() { Name = "QR code of the address" }).IsVisibleAsync());
            Assert.Empty(await Rules.AxeAsync(visit.Page));
            Assert.Empty(await Rules.SidewaysAsync(visit.Page));
            Assert.Empty(await Rules.SmallTargetsAsync(visit.Page));
            Assert.Empty(await Rules.ColouredAsync(visit.Page));
            Assert.Empty(await Rules.InlineAsync(visit.Page));
        }
    }
}
