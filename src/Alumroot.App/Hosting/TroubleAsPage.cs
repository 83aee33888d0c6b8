using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Features;

namespace Alumroot.App.Hosting;

/// <summary>A trouble page stands in place of another: it is looked at, whatever was sent to the other one. Without this, the form that was refused would be read again by the page that says so.</summary>
/// <param name="next">The rest of the pipeline.</param>
public sealed class TroubleAsPage(RequestDelegate next)
{
    /// <summary>Turns the request for a trouble page into a plain look and passes it on.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        bool inPlace = context.Features.Get<IStatusCodeReExecuteFeature>() is not null || context.Features.Get<IExceptionHandlerPathFeature>() is not null;
        if (inPlace && !HttpMethods.IsGet(context.Request.Method))
        {
            context.Request.Method = HttpMethods.Get;
            context.Request.ContentType = null;
            context.Request.ContentLength = null;
            context.Features.Set<IFormFeature>(null);
        }
        return next(context);
    }
}
