using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Alumroot.App.Recording;

/// <summary>Where a browser is sent after a form: always to a page that can be loaded again without doing anything twice.</summary>
internal static class Answers
{
    /// <summary>Names in the address: what was kept, why nothing was, and why a photograph was not taken.</summary>
    public const string Kept = "kept", NotKept = "not-kept", Refused = "refused";

    /// <summary>Back to a page, with what was kept or why not.</summary>
    /// <param name="address">The page.</param>
    /// <param name="result">What came of it.</param>
    /// <param name="more">Further fields of the address.</param>
    public static RedirectHttpResult To(string address, AppendResult result, params (string, string?)[] more) => result switch
    {
        AppendResult.Kept kept => Show(address, Kept, kept.Entry.Id.Text, more),
        AppendResult.AlreadyThere there => Show(address, Kept, there.Entry.Id.Text, more),
        AppendResult.MovedOn moved => Show(address, NotKept, "moved", ("by", moved.Latest.Id.Text)),
        AppendResult.NumberTaken taken => Show(address, NotKept, "taken", ("by", taken.Existing.Id.Text)),
        AppendResult.PhotoMissing => Show(address, NotKept, "photo"),
        _ => Show(address, NotKept, "nothing-to-correct"),
    };

    /// <summary>Back to a page with what was typed, so that it can be mended.</summary>
    public static RedirectHttpResult Again(string address, IEnumerable<(string Field, string? Typed)> fields) =>
        See(address + string.Concat(fields.Where(f => f.Typed is not null).Select((f, i) => $"{(i == 0 && !address.Contains('?', StringComparison.Ordinal) ? '?' : '&')}{f.Field}={Uri.EscapeDataString(f.Typed!)}")));

    /// <summary>To a page, by GET.</summary>
    public static RedirectHttpResult See(string address) => TypedResults.Redirect(address, permanent: false, preserveMethod: false);

    private static RedirectHttpResult Show(string address, string name, string value, params (string, string?)[] more) => Again(address, [(name, value), .. more]);

    /// <summary>The page of a batch, lot, paint, exposure or trial.</summary>
    public static string Page(SubjectKey key) => key.Class switch
    {
        SubjectClass.Batch => $"/lakes/{key}",
        SubjectClass.Lot => $"/shelf/{key}",
        SubjectClass.Paint => $"/paints/{key}",
        SubjectClass.Exposure => $"/permanence/{key}",
        SubjectClass.Trial => $"/trials/{key}",
        _ => "/studio",
    };
}
