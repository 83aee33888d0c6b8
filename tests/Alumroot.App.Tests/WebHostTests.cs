using System.Net;
using Alumroot.App.Hosting;
using Alumroot.App.Studio;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.App.Tests;

/// <summary>The host over real Kestrel on a free port: headers, names, status codes, words of the trouble pages.</summary>
public sealed class WebHostTests : IAsyncLifetime
{
    private readonly DemoStudio _studio = DemoStudio.Open(TimeProvider.System);
    private readonly WebApplication _app;
    private readonly HttpClient _client = new();
    private string _address = "";

    public WebHostTests() => _app = AppHost.Build(new AppOptions { Demo = true }, _studio.Store);

    public async ValueTask InitializeAsync()
    {
        _app.MapGet("/boom", string () => throw new FormatException("a secret detail"));
        await _app.StartAsync(TestContext.Current.CancellationToken);
        _address = _app.Urls.First();
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
        _studio.Dispose();
    }

    [Theory]
    [InlineData("/", HttpStatusCode.OK)]
    [InlineData("/nowhere", HttpStatusCode.NotFound)]
    [InlineData("/boom", HttpStatusCode.InternalServerError)]
    public async Task Every_answer_has_the_safety_headers_and_its_own_status(string path, HttpStatusCode expected)
    {
        using HttpResponseMessage answer = await Get(path);
        Assert.Equal(expected, answer.StatusCode);
        Assert.Equal(SafetyHeaders.ContentPolicy, answer.Headers.GetValues("Content-Security-Policy").Single());
        Assert.DoesNotContain("unsafe", SafetyHeaders.ContentPolicy, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
        Assert.False(answer.Headers.Contains("Server"));
        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task Trouble_pages_say_what_to_do_and_no_inner_detail()
    {
        string unexpected = await Text("/boom");
        Assert.Contains("What was kept before is kept.", unexpected, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", unexpected, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", unexpected, StringComparison.Ordinal);
        Assert.Contains("There is no page at this address.", await Text("/nowhere"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("studio.example", HttpStatusCode.BadRequest)]
    [InlineData("127.0.0.1.example", HttpStatusCode.BadRequest)]
    [InlineData("localhost", HttpStatusCode.OK)]
    [InlineData("[::1]", HttpStatusCode.OK)]
    public async Task Only_the_machines_own_names_are_answered(string host, HttpStatusCode expected)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, _address + "/");
        request.Headers.Host = host;
        using HttpResponseMessage answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(expected, answer.StatusCode);
    }

    [Fact]
    public async Task It_listens_on_this_machine_only_and_reports_health()
    {
        Assert.All(_app.Urls, url => Assert.StartsWith("http://127.0.0.1:", url, StringComparison.Ordinal));
        Assert.Equal("Healthy", await Text("/healthz"));
    }

    [Fact]
    public async Task Pages_are_compressed_and_files_of_the_pages_are_served()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, _address + "/");
        request.Headers.AcceptEncoding.ParseAdd("br");
        using HttpResponseMessage answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Contains("br", answer.Content.Headers.ContentEncoding);
        foreach (string path in new[] { "/look.css", "/parts.css", "/forms.css", "/charts.css", "/print.css", "/live.js", "/mark.svg", "/fonts/alumroot-text-400.woff2", "/fonts/OFL.txt", "/_framework/blazor.web.js" })
        {
            using HttpResponseMessage file = await Get(path);
            Assert.True(file.IsSuccessStatusCode, path);
        }
    }

    [Fact]
    public async Task The_demo_says_so_on_every_page()
    {
        foreach (string path in new[] { "/", "/nowhere" })
            Assert.Contains("all readings invented", await Text(path), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_too_large_is_told_by_a_page_before_it_is_read()
    {
        var address = new Uri(_address);
        using var client = new System.Net.Sockets.TcpClient(address.Host, address.Port);
        await using System.Net.Sockets.NetworkStream stream = client.GetStream();
        await stream.WriteAsync(System.Text.Encoding.ASCII.GetBytes($"POST /lakes/26-001/note HTTP/1.1\r\nHost: localhost\r\nContent-Type: multipart/form-data; boundary=x\r\nContent-Length: 99999999999\r\n\r\n"), TestContext.Current.CancellationToken);
        using var reader = new StreamReader(stream);
        Assert.Equal("HTTP/1.1 303 See Other", await reader.ReadLineAsync(TestContext.Current.CancellationToken));
        string page = await Text("/too-large");
        Assert.Matches("larger than [1-9][0-9]+ MiB, so nothing of it was kept", page);
    }

    private Task<HttpResponseMessage> Get(string path) => _client.GetAsync(new Uri(_address + path), TestContext.Current.CancellationToken);

    private async Task<string> Text(string path)
    {
        using HttpResponseMessage answer = await Get(path);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
