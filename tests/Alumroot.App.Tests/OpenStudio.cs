using System.Net;
using System.Text.RegularExpressions;
using Alumroot.App.Hosting;
using Alumroot.Studio;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.App.Tests;

/// <summary>The pages over real Kestrel on a free port with an empty studio of their own, and a browser without script: forms are filled and sent as they stand.</summary>
internal sealed partial class OpenStudio : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly HttpClient _client;

    private OpenStudio(StudioStore store, WebApplication app, string folder) =>
        (Store, _app, Folder, _client) = (store, app, folder, new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new Uri(app.Urls.First()) });

    public StudioStore Store { get; }

    public string Folder { get; }

    public static async Task<OpenStudio> StartAsync(TimeProvider? clock = null)
    {
        string folder = Path.Combine(Path.GetTempPath(), "alumroot-" + Guid.NewGuid().ToString("N"));
        StudioStore store = StudioStore.Open(folder, StudioAccess.Write, TimeProvider.System);
        WebApplication app = AppHost.Build(new AppOptions { Clock = clock ?? TimeProvider.System }, store);
        await app.StartAsync();
        return new OpenStudio(store, app, folder);
    }

    public async Task<Seen> GetAsync(string path) => await SeenAsync(await _client.GetAsync(new Uri(path, UriKind.Relative)));

    public Task<byte[]> BytesAsync(string path) => _client.GetByteArrayAsync(new Uri(path, UriKind.Relative));

    public async Task<Seen> PostAsync(string action, IEnumerable<KeyValuePair<string, string>> fields)
    {
        using var content = new FormUrlEncodedContent(fields);
        return await SeenAsync(await _client.PostAsync(new Uri(action, UriKind.Relative), content));
    }

    public async Task<Seen> SendAsync(Form form, params (string Name, string Value)[] typed) =>
        await PostAsync(form.Action, form.Hidden.Concat(typed.Select(t => KeyValuePair.Create(t.Name, t.Value))));

    public async Task<Seen> UploadAsync(Form form, byte[] file, string name)
    {
        using var content = new MultipartFormDataContent();
        foreach ((string field, string value) in form.Hidden) content.Add(new StringContent(value), field);
        content.Add(new ByteArrayContent(file), "pictures", name);
        return await SeenAsync(await _client.PostAsync(new Uri(form.Action, UriKind.Relative), content));
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.StopAsync();
        await _app.DisposeAsync();
        Store.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static async Task<Seen> SeenAsync(HttpResponseMessage answer)
    {
        using (answer) return new Seen(answer.StatusCode, answer.RequestMessage!.RequestUri!.PathAndQuery, await answer.Content.ReadAsStringAsync());
    }

    /// <summary>A page as it came.</summary>
    internal sealed record Seen(HttpStatusCode Status, string Address, string Html)
    {
        public IReadOnlyList<Form> Forms => [.. FormShape().Matches(Html).Select(m => new Form(
            WebUtility.HtmlDecode(m.Groups[1].Value),
            [.. HiddenShape().Matches(m.Groups[2].Value).Select(h => KeyValuePair.Create(WebUtility.HtmlDecode(h.Groups[1].Value), WebUtility.HtmlDecode(h.Groups[2].Value)))],
            [.. ButtonShape().Matches(m.Groups[2].Value).Select(b => (WebUtility.HtmlDecode(b.Groups[1].Value), WebUtility.HtmlDecode(b.Groups[2].Value)))]))];

        /// <summary>The words of the page.</summary>
        public string Text => Blanks().Replace(WebUtility.HtmlDecode(Tags().Replace(Html[Html.IndexOf("<main", StringComparison.Ordinal)..Html.IndexOf("</main>", StringComparison.Ordinal)], " ")), " ");

        public Form BenchForm(string act) => Forms.First(f => f.Action.EndsWith("/bench", StringComparison.Ordinal) && f.Field("act") == act);
    }

    /// <summary>A form with what it carries.</summary>
    internal sealed record Form(string Action, IReadOnlyList<KeyValuePair<string, string>> Hidden, IReadOnlyList<(string Name, string Value)> Buttons)
    {
        public string? Field(string name) => Hidden.FirstOrDefault(h => h.Key == name).Value;
    }

    [GeneratedRegex("<form[^>]*method=\"post\"[^>]*action=\"([^\"]+)\"[^>]*>(.*?)</form>", RegexOptions.Singleline)]
    private static partial Regex FormShape();

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex HiddenShape();

    [GeneratedRegex("<button[^>]*name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex ButtonShape();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tags();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
