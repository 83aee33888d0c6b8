using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>What the first page weighs on the way to the browser. The limits are our own: 40 kB for page and styles, 220 kB in all.</summary>
public sealed class WeightTests(Studio studio)
{
    [Theory]
    [InlineData("/handbook/reading")]
    [InlineData("/lakes/plan")]
    [InlineData(Plans.Madder)]
    public async Task The_first_load_is_light(string path)
    {
        await using Visit visit = await studio.OpenAsync("about:blank");
        var answers = new List<IResponse>();
        visit.Page.Response += (_, answer) => answers.Add(answer);
        await visit.GoAsync(path);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        long pageAndStyles = 0, all = 0;
        foreach (IResponse answer in answers.ToArray())
        {
            long bytes = (await answer.Request.SizesAsync()).ResponseBodySize;
            all += bytes;
            if (answer.Request.ResourceType is "document" or "stylesheet") pageAndStyles += bytes;
        }
        Assert.InRange(pageAndStyles, 1000, 40_000);
        Assert.InRange(all, 50_000, 220_000);
    }
}
