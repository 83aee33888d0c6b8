namespace Alumroot.App.Sharing;

/// <summary>The two forms of sharing: the passphrase, and the end. The framework checks the antiforgery token of each before it comes here.</summary>
internal static class SharingEndpoints
{
    /// <summary>The page about sharing.</summary>
    public const string Page = "/studio/sharing";

    /// <summary>The field of the passphrase.</summary>
    public const string Field = "passphrase";

    public static void MapSharing(this WebApplication app)
    {
        app.MapPost(EnteredOnly.Page, Enter);
        app.MapPost($"{Page}/stop", Stop);
    }

    private static IResult Enter(IFormCollection form, HttpContext context, Share share)
    {
        if (Share.IsOwn(context)) return See("/");
        if (share.Enter(form[Field].ToString()) is not { } cookie) return See($"{EnteredOnly.Page}?again=1");
        context.Response.Cookies.Append(Share.Cookie, cookie, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, IsEssential = true, MaxAge = Share.Stay, Path = "/" });
        return See("/");
    }

    // A visitor cannot shut the others out.
    private static IResult Stop(IFormCollection form, HttpContext context, Share share)
    {
        if (!Share.IsOwn(context)) return See(Page);
        share.Close();
        return See(Page);
    }

    private static IResult See(string address) => TypedResults.Redirect(address, permanent: false, preserveMethod: false);
}
