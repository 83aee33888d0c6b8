using Alumroot.Studio;
using Alumroot.Studio.Photos;
using Microsoft.Net.Http.Headers;

namespace Alumroot.App.Hosting;

/// <summary>Photographs by their hash: as they came, and shrunken. What a hash names never changes, so a browser may keep it for ever.</summary>
internal static class PhotoEndpoints
{
    private const string ForEver = "private, max-age=31536000, immutable";

    public static void MapPhotos(this WebApplication app)
    {
        RouteGroupBuilder photo = app.MapGroup("/photo/{hash}");
        photo.MapGet("", (string hash, HttpContext context, StudioStore studio) =>
            PhotoFolder.IsHash(hash) && studio.Photos.KindOf(hash) is { } kind ? Sent(context, studio.Photos.Open(hash), TypeOf(kind), hash) : TypedResults.NotFound());
        photo.MapGet("/small", (string hash, HttpContext context, StudioStore studio) => Small(context, studio, hash, PhotoFolder.ListSidePixels));
        photo.MapGet("/medium", (string hash, HttpContext context, StudioStore studio) => Small(context, studio, hash, PhotoFolder.PageSidePixels));
    }

    private static IResult Small(HttpContext context, StudioStore studio, string hash, int side) =>
        PhotoFolder.IsHash(hash) && studio.Photos.OpenSmall(hash, side) is { } small ? Sent(context, small, TypeOf(PhotoKind.Jpeg), $"{hash}-{side}") : TypedResults.NotFound();

    private static IResult Sent(HttpContext context, Stream content, string type, string tag)
    {
        context.Response.Headers.CacheControl = ForEver;
        return TypedResults.Stream(content, type, entityTag: new EntityTagHeaderValue($"\"{tag}\""), enableRangeProcessing: true);
    }

    private static string TypeOf(PhotoKind kind) => kind switch
    {
        PhotoKind.Jpeg => "image/jpeg",
        PhotoKind.Png => "image/png",
        _ => "image/webp",
    };
}
