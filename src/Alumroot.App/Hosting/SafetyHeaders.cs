namespace Alumroot.App.Hosting;

/// <summary>Headers on every answer: nothing inline, nothing from elsewhere, no framing, no address told to others.</summary>
/// <param name="next">The rest of the pipeline.</param>
public sealed class SafetyHeaders(RequestDelegate next)
{
    /// <summary>What a page may load and where it may send: its own address only.</summary>
    public const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; connect-src 'self'; "
        + "form-action 'self'; base-uri 'self'; object-src 'none'; frame-ancestors 'none'";

    /// <summary>Sets the headers and passes the request on.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        context.Response.OnStarting(() =>
        {
            IHeaderDictionary headers = context.Response.Headers;
            headers.ContentSecurityPolicy = ContentPolicy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            return Task.CompletedTask;
        });
        return next(context);
    }
}
