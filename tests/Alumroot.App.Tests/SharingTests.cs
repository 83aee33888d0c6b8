using System.Net;
using System.Text.RegularExpressions;
using Alumroot.App.Hosting;
using Alumroot.App.Sharing;
using Alumroot.App.Studio;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace Alumroot.App.Tests;

/// <summary>Sharing over real Kestrel. Where a request comes from is told by a header of the tests, so that they run on a machine without a network.</summary>
public sealed partial class SharingTests : IAsyncLifetime
{
    // Addresses for documentation (RFC 5737).
    private const string Phone = "192.0.2.7", OtherPhone = "198.51.100.8", Here = "127.0.0.1";

    private const string Words = "weld over potash alum";

    private readonly DemoStudio _studio = DemoStudio.Open(TimeProvider.System);
    private readonly WebApplication _app;
    private int _port;

    public SharingTests() => _app = AppHost.Build(
        new AppOptions { Demo = true, Share = Passphrase.Of(Words) }, _studio.Store, services => services.AddSingleton<IStartupFilter, FromElsewhere>());

    public async ValueTask InitializeAsync()
    {
        await _app.StartAsync(TestContext.Current.CancellationToken);
        _port = new Uri(_app.Urls.First()).Port;
    }

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        _studio.Dispose();
    }

    [Fact]
    public void It_listens_on_every_address_only_when_it_is_shared() =>
        Assert.All(_app.Urls, url => Assert.Matches(@"^http://(\[::\]|0\.0\.0\.0):\d+$", url));

    [Theory]
    [InlineData("/")]
    [InlineData("/lakes")]
    [InlineData("/studio/export")]
    [InlineData("/studio/sharing")]
    [InlineData("/kept")]
    [InlineData("/healthz")]
    [InlineData("/nowhere")]
    [InlineData("/photo/0000000000000000000000000000000000000000000000000000000000000000")]
    public async Task A_visitor_who_has_not_entered_sees_nothing_else(string path)
    {
        using var phone = new Visitor(_port, Phone);
        using HttpResponseMessage answer = await phone.Get(path);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal("/enter", answer.Headers.Location?.ToString());
        Assert.Empty(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_page_that_asks_has_its_looks_and_no_way_around()
    {
        using var phone = new Visitor(_port, Phone);
        string page = await phone.Text("/enter");
        Assert.Contains("Passphrase", page, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"/lakes\"", page, StringComparison.Ordinal);
        string css = Stylesheet().Match(page).Groups[1].Value;
        using HttpResponseMessage looks = await phone.Get("/" + css);
        Assert.Equal("text/css", looks.Content.Headers.ContentType?.MediaType);
        using HttpResponseMessage post = await phone.Post("/studio/backup", []);
        Assert.Equal("/enter", post.Headers.Location?.ToString());
        Assert.False(Directory.Exists(Path.Combine(_studio.Store.Folder, "backups")));
    }

    [Fact]
    public async Task Who_gives_the_passphrase_is_in_and_stays_in()
    {
        using var phone = new Visitor(_port, Phone);
        using HttpResponseMessage entered = await phone.Enter($" {Words} ");
        Assert.Equal("/", entered.Headers.Location?.ToString());
        string cookie = entered.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith(Share.Cookie, StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(Uri.EscapeDataString(Words), cookie, StringComparison.Ordinal);
        foreach (string path in new[] { "/", "/lakes", "/studio" })
        {
            using HttpResponseMessage answer = await phone.Get(path);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
        using var here = new Visitor(_port, Here);
        Assert.Contains("One visitor has entered.", await here.Text("/studio/sharing"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_passphrase_is_said_and_too_many_tries_are_stopped_for_that_address()
    {
        using var phone = new Visitor(_port, Phone);
        using HttpResponseMessage wrong = await phone.Enter("weld over soda alum");
        Assert.Equal("/enter?again=1", wrong.Headers.Location?.ToString());
        Assert.DoesNotContain(wrong.Headers.TryGetValues("Set-Cookie", out IEnumerable<string>? set) ? set : [], c => c.StartsWith(Share.Cookie, StringComparison.Ordinal));
        Assert.Contains("That is not the passphrase.", await phone.Text("/enter?again=1"), StringComparison.Ordinal);
        for (int i = 1; i < Attempts.FromOneAddress; i++) (await phone.Enter($"guess number {i} of many")).Dispose();
        using HttpResponseMessage stopped = await phone.Enter(Words);
        Assert.Equal(HttpStatusCode.TooManyRequests, stopped.StatusCode);
        Assert.NotNull(stopped.Headers.RetryAfter);
        Assert.Contains("Wait a minute", await stopped.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        using HttpResponseMessage still = await phone.Get("/");
        Assert.Equal(HttpStatusCode.SeeOther, still.StatusCode);
        using var other = new Visitor(_port, OtherPhone);
        using HttpResponseMessage entered = await other.Enter(Words);
        Assert.Equal("/", entered.Headers.Location?.ToString());
    }

    [Fact]
    public async Task A_form_from_elsewhere_and_a_made_up_cookie_are_worth_nothing()
    {
        using var phone = new Visitor(_port, Phone);
        using HttpResponseMessage foreign = await phone.Post("/enter", new() { ["passphrase"] = Words });
        Assert.True(foreign.StatusCode >= HttpStatusCode.BadRequest && !foreign.Headers.Contains("Set-Cookie"));
        phone.Cookies.Add(phone.Address, new Cookie(Share.Cookie, "CfDJ8MadeUp"));
        using HttpResponseMessage made = await phone.Get("/");
        Assert.Equal(HttpStatusCode.SeeOther, made.StatusCode);
        // A cookie for another passphrase of the same studio.
        using IServiceScope scope = _app.Services.CreateScope();
        var before = new Share(Passphrase.Of("another set of words"), [], scope.ServiceProvider.GetRequiredService<Microsoft.AspNetCore.DataProtection.IDataProtectionProvider>());
        phone.Cookies.Add(phone.Address, new Cookie(Share.Cookie, before.Enter("another set of words")!));
        using HttpResponseMessage old = await phone.Get("/");
        Assert.Equal(HttpStatusCode.SeeOther, old.StatusCode);
    }

    /// <summary>The pages have none of their own; every address that writes is mapped with the form it takes, and the framework then asks for its token.</summary>
    [Fact]
    public void Every_address_that_is_posted_to_asks_for_the_token_of_its_form()
    {
        Microsoft.AspNetCore.Routing.RouteEndpoint[] posted =
        [
            .. _app.Services.GetServices<Microsoft.AspNetCore.Routing.EndpointDataSource>().SelectMany(s => s.Endpoints).OfType<Microsoft.AspNetCore.Routing.RouteEndpoint>()
                .Where(e => e.Metadata.GetMetadata<Microsoft.AspNetCore.Routing.IHttpMethodMetadata>()?.HttpMethods.Any(m => m is not ("GET" or "HEAD")) == true),
        ];
        Assert.Contains(posted, e => e.RoutePattern.RawText == "/enter");
        Assert.All(posted, e => Assert.True(e.Metadata.GetMetadata<Microsoft.AspNetCore.Antiforgery.IAntiforgeryMetadata>()?.RequiresValidation == true, e.DisplayName));
    }

    [Fact]
    public async Task At_the_machine_itself_nothing_is_asked()
    {
        using var here = new Visitor(_port, Here);
        using HttpResponseMessage answer = await here.Get("/lakes");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task Only_the_machines_own_names_are_answered()
    {
        using var phone = new Visitor(_port, Phone);
        foreach (string name in _app.Services.GetRequiredService<Share>().Names)
        {
            using HttpResponseMessage own = await phone.Get("/enter", name);
            Assert.Equal(HttpStatusCode.OK, own.StatusCode);
        }
        foreach (string name in new[] { "studio.example", "192.0.2.99", "localhost.example" })
        {
            using HttpResponseMessage other = await phone.Get("/enter", name);
            Assert.Equal(HttpStatusCode.BadRequest, other.StatusCode);
        }
    }

    [Fact]
    public async Task It_ends_from_the_machine_and_not_from_a_visitor()
    {
        using var phone = new Visitor(_port, Phone);
        (await phone.Enter(Words)).Dispose();
        using HttpResponseMessage tried = await phone.Post("/studio/sharing/stop", new() { ["__RequestVerificationToken"] = Token().Match(await phone.Text("/studio")).Groups[1].Value });
        Assert.Equal(HttpStatusCode.Found, tried.StatusCode);
        using HttpResponseMessage still = await phone.Get("/");
        Assert.Equal(HttpStatusCode.OK, still.StatusCode);
        Assert.DoesNotContain("Stop sharing", await phone.Text("/studio/sharing"), StringComparison.Ordinal);

        using var here = new Visitor(_port, Here);
        string page = await here.Text("/studio/sharing");
        (await here.Post("/studio/sharing/stop", new() { ["__RequestVerificationToken"] = Token().Match(page).Groups[1].Value })).Dispose();
        foreach (string path in new[] { "/", "/enter", "/look.css" })
        {
            using HttpResponseMessage ended = await phone.Get(path);
            Assert.Equal(HttpStatusCode.Forbidden, ended.StatusCode);
        }
        using HttpResponseMessage own = await here.Get("/");
        Assert.Equal(HttpStatusCode.OK, own.StatusCode);
        Assert.Contains("Sharing has ended", await here.Text("/studio/sharing"), StringComparison.Ordinal);
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();

    [GeneratedRegex("rel=\"stylesheet\" href=\"([^\"]+)\"")]
    private static partial Regex Stylesheet();

    /// <summary>A browser at an address.</summary>
    private sealed class Visitor : IDisposable
    {
        private readonly HttpClient _client;
        private readonly string _from;

        public Visitor(int port, string from)
        {
            _from = from;
            Address = new Uri($"http://127.0.0.1:{port}/");
            _client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false, CookieContainer = Cookies }) { BaseAddress = Address };
        }

        public Uri Address { get; }

        public CookieContainer Cookies { get; } = new();

        public Task<HttpResponseMessage> Get(string path, string? host = null) => Send(HttpMethod.Get, path, null, host);

        public Task<HttpResponseMessage> Post(string path, Dictionary<string, string> fields) => Send(HttpMethod.Post, path, new FormUrlEncodedContent(fields), null);

        public async Task<string> Text(string path)
        {
            using HttpResponseMessage answer = await Get(path);
            return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        }

        public async Task<HttpResponseMessage> Enter(string words)
        {
            string page = await Text("/enter");
            return await Post("/enter", new() { ["passphrase"] = words, ["__RequestVerificationToken"] = Token().Match(page).Groups[1].Value });
        }

        public void Dispose() => _client.Dispose();

        private async Task<HttpResponseMessage> Send(HttpMethod method, string path, HttpContent? content, string? host)
        {
            using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative)) { Content = content };
            request.Headers.Add(FromElsewhere.Header, _from);
            if (host is not null) request.Headers.Host = host;
            return await _client.SendAsync(request, TestContext.Current.CancellationToken);
        }
    }

    private sealed class FromElsewhere : IStartupFilter
    {
        public const string Header = "X-Test-From";

        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use(async (context, rest) =>
            {
                if (context.Request.Headers[Header].ToString() is { Length: > 0 } from) context.Connection.RemoteIpAddress = IPAddress.Parse(from);
                await rest();
            });
            next(app);
        };
    }
}
