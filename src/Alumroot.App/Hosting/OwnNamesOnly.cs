using Alumroot.App.Sharing;

namespace Alumroot.App.Hosting;

/// <summary>Answers only requests addressed to this machine by its own names, so that no page elsewhere can reach in under another name. While it is shared, the names it has in the local network are among them.</summary>
/// <param name="next">The rest of the pipeline.</param>
public sealed class OwnNamesOnly(RequestDelegate next)
{
    private static readonly string[] Names = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Passes the request on, or ends it with status 400 and one sentence.</summary>
    public Task InvokeAsync(HttpContext context, Share share)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(share);
        if (Names.Concat(share.Names).Contains(context.Request.Host.Host, StringComparer.OrdinalIgnoreCase)) return next(context);
        context.Response.StatusCode = StatusCodes.Status400BadRequest;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(share.WasOpened ? "The studio answers only to the addresses that it shows under Sharing. Open it by one of them." : "The studio answers only to localhost on its own machine. Open it by that address.");
    }
}
