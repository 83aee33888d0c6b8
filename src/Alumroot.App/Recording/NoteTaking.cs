using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;

namespace Alumroot.App.Recording;

/// <summary>Words and photographs about a batch or lot.</summary>
internal static class NoteTaking
{
    private const int LongestNote = 4000, MostPhotos = 12;

    /// <summary>Keeps a note. A photograph that cannot be taken loses only itself; what was written is kept.</summary>
    public static IResult Keep(Posted posted, StudioStore studio, SubjectKey subject, string page)
    {
        if (studio.Find(posted.Id) is { } there) return Answers.To(page, new AppendResult.AlreadyThere(there));
        var hashes = new List<string>();
        PhotoRefusal? refused = null;
        foreach (IFormFile file in posted.Files.Take(MostPhotos))
        {
            if (file.Length == 0) continue;
            using Stream content = file.OpenReadStream();
            PhotoOutcome outcome = studio.Photos.Keep(content);
            if (outcome is PhotoOutcome.Kept photo) hashes.Add(photo.Hash);
            else refused ??= ((PhotoOutcome.Refused)outcome).Why;
        }
        string? words = posted.Text("note");
        (string, string?) refusal = (Answers.Refused, refused?.ToString());
        if (words is null && hashes.Count == 0) return Answers.Again(page, [refused is null ? (Answers.NotKept, "empty") : refusal]);
        var note = new Noted { Note = words?[..Math.Min(words.Length, LongestNote)], Photos = [.. hashes.Distinct()] };
        return Answers.To(page, posted.Keep(studio, subject, note), refusal);
    }
}
