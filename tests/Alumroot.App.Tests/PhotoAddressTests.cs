using System.Net;
using Alumroot.App.Hosting;
using Alumroot.App.Studio;
using Alumroot.Studio.Photos;
using Microsoft.AspNetCore.Builder;
using SkiaSharp;

namespace Alumroot.App.Tests;

/// <summary>Photographs over HTTP: as they came and shrunken, to be kept by a browser for ever, and nothing but photographs.</summary>
public sealed class PhotoAddressTests : IAsyncLifetime
{
    private readonly DemoStudio _studio = DemoStudio.Open(TimeProvider.System);
    private readonly WebApplication _app;
    private readonly HttpClient _client = new();

    public PhotoAddressTests() => _app = AppHost.Build(new AppOptions { Demo = true }, _studio.Store);

    public async ValueTask InitializeAsync()
    {
        await _app.StartAsync(TestContext.Current.CancellationToken);
        _client.BaseAddress = new Uri(_app.Urls.First());
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
        _studio.Dispose();
    }

    [Fact]
    public async Task The_original_goes_out_to_the_byte_and_the_copies_in_their_sizes()
    {
        byte[] picture = Picture(1600, 1200);
        string hash = Assert.IsType<PhotoOutcome.Kept>(_studio.Store.Photos.Keep(new MemoryStream(picture))).Hash;
        using HttpResponseMessage original = await Get($"/photo/{hash}");
        Assert.Equal(picture, await Bytes(original));
        AssertHeaders(original, "image/png");
        foreach ((string name, int side) in new[] { ("small", 320), ("medium", 1280) })
        {
            using HttpResponseMessage answer = await Get($"/photo/{hash}/{name}");
            AssertHeaders(answer, "image/jpeg");
            using SKBitmap copy = SKBitmap.Decode(await Bytes(answer));
            Assert.Equal((side, side * 3 / 4), (copy.Width, copy.Height));
        }

        using var again = new HttpRequestMessage(HttpMethod.Get, $"/photo/{hash}");
        again.Headers.IfNoneMatch.Add(original.Headers.ETag!);
        using HttpResponseMessage unchanged = await _client.SendAsync(again, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotModified, unchanged.StatusCode);
    }

    [Theory]
    [InlineData("/photo/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/photo/0000000000000000000000000000000000000000000000000000000000000000/small")]
    [InlineData("/photo/..%2F..%2Fstudio.db")]
    [InlineData("/photo/..%2F..%2Fstudio.db/small")]
    [InlineData("/photo/%2Fetc%2Fpasswd")]
    [InlineData("/photo/..%5C..%5Cstudio.db/medium")]
    public async Task No_other_file_can_be_asked_for(string address)
    {
        using HttpResponseMessage answer = await Get(address);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static void AssertHeaders(HttpResponseMessage answer, string type)
    {
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        string cache = answer.Headers.CacheControl!.ToString();
        Assert.Contains("immutable", cache, StringComparison.Ordinal);
        Assert.Contains("private", cache, StringComparison.Ordinal);
        Assert.True(answer.Headers.CacheControl.MaxAge >= TimeSpan.FromDays(365), cache);
    }

    private static byte[] Picture(int width, int height)
    {
        using var bitmap = new SKBitmap(width, height);
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private Task<HttpResponseMessage> Get(string path) => _client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);

    private static Task<byte[]> Bytes(HttpResponseMessage answer) => answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
}
