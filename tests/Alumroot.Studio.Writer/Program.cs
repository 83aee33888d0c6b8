using Alumroot.Quantities;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;
using SkiaSharp;

// Appends entries to the studio named first, until it is killed, and prints the number of each once it was acknowledged.
using StudioStore studio = StudioStore.Open(args[0], StudioAccess.Write, TimeProvider.System, TimeSpan.FromSeconds(20));
await Console.Out.WriteLineAsync("open");
using var bitmap = new SKBitmap(40, 30);
using SKData jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
byte[] picture = jpeg.ToArray();
for (int i = 0; ; i++)
{
    DateTimeOffset now = TimeProvider.System.GetLocalNow();
    // What stands behind the end of a picture makes it another file and no other picture.
    string[] photos = i % 5 == 0 ? [((PhotoOutcome.Kept)studio.Photos.Keep(new MemoryStream([.. picture, .. BitConverter.GetBytes(now.Ticks), .. new byte[20_000]]))).Hash] : [];
    var document = new BatchStep(StepKind.Alkali) { Values = [Measured.Of("amount", $"{i} g", Mass.FromGrams(i))], Note = new string('x', i % 700), Photos = photos };
    EntryId id = EntryId.New(now);
    if (studio.Append(document.ToEntry(id, SubjectKey.Batch(26, 1 + (i % 3)), now)) is AppendResult.Kept)
        await Console.Out.WriteLineAsync(id.Text);
}
