using Microsoft.AspNetCore.Http.Features;

namespace Alumroot.App.Hosting;

/// <summary>A form that says it is larger than the host takes is answered by a page with a reason, before a byte of it is read.</summary>
/// <param name="next">The rest of the pipeline.</param>
public sealed class TooLarge(RequestDelegate next)
{
    /// <summary>The page that says so.</summary>
    public const string Page = "/too-large";

    /// <summary>Passes the request on, or sends the browser to the page that says why not.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (!(context.Request.ContentLength > context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize)) return next(context);
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = Page;
        return Task.CompletedTask;
    }
}
