using Microsoft.AspNetCore.StaticAssets;

namespace Alumroot.App.Sharing;

/// <summary>Sends everyone who is not at this machine and has not given the passphrase to the page that asks for it.</summary>
/// <param name="next">The rest of the pipeline.</param>
public sealed class EnteredOnly(RequestDelegate next)
{
    /// <summary>The page that asks.</summary>
    public const string Page = "/enter";

    /// <summary>Passes the request on, redirects it, or ends it with status 403 and one sentence.</summary>
    public async Task InvokeAsync(HttpContext context, Share share)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(share);
        if (Share.IsOwn(context))
        {
            await next(context).ConfigureAwait(false);
            return;
        }
        if (!share.IsOpen)
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            context.Response.ContentType = "text/plain; charset=utf-8";
            await context.Response.WriteAsync("The studio is no longer shared. What you kept is kept; ask at the studio's own machine to share it again.").ConfigureAwait(false);
            return;
        }
        if (share.HasEntered(context.Request.Cookies[Share.Cookie]) || context.Request.Path == Page || context.GetEndpoint()?.Metadata.GetMetadata<StaticAssetDescriptor>() is not null)
        {
            await next(context).ConfigureAwait(false);
            return;
        }
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = Page;
    }
}
