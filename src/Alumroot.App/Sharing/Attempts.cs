using System.Globalization;
using System.Net;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace Alumroot.App.Sharing;

/// <summary>How often the passphrase may be tried: from one address, and from all together, since one machine can have many addresses.</summary>
internal static class Attempts
{
    public const int FromOneAddress = 6;

    public const int FromAll = 60;

    public static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static void Limit(RateLimiterOptions options)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.GlobalLimiter = PartitionedRateLimiter.CreateChained(
            PartitionedRateLimiter.Create<HttpContext, IPAddress>(c => IsTry(c) ? Within(c.Connection.RemoteIpAddress ?? IPAddress.None, FromOneAddress) : RateLimitPartition.GetNoLimiter(IPAddress.None)),
            PartitionedRateLimiter.Create<HttpContext, bool>(c => IsTry(c) ? Within(true, FromAll) : RateLimitPartition.GetNoLimiter(false)));
        options.OnRejected = async (rejected, cancellation) =>
        {
            HttpResponse response = rejected.HttpContext.Response;
            response.Headers.RetryAfter = ((int)Window.TotalSeconds).ToString(CultureInfo.InvariantCulture);
            response.ContentType = "text/plain; charset=utf-8";
            await response.WriteAsync("The passphrase was tried too often. Wait a minute, go back, and try again.", cancellation).ConfigureAwait(false);
        };
    }

    private static bool IsTry(HttpContext context) => HttpMethods.IsPost(context.Request.Method) && context.Request.Path == EnteredOnly.Page;

    private static RateLimitPartition<T> Within<T>(T who, int tries) => RateLimitPartition.GetSlidingWindowLimiter(who, _ => new SlidingWindowRateLimiterOptions
    {
        PermitLimit = tries,
        Window = Window,
        SegmentsPerWindow = 6,
        QueueLimit = 0,
    });
}
