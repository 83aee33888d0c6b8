using Alumroot.Quantities;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Store;

// Appends entries to the studio named first, until it is killed, and prints the number of each once it was acknowledged.
using StudioStore studio = StudioStore.Open(args[0], StudioAccess.Write, TimeProvider.System, TimeSpan.FromSeconds(20));
await Console.Out.WriteLineAsync("open");
byte[] picture = [0xFF, 0xD8, 0xFF, 0, 0, 0, 0, 0];
for (int i = 0; ; i++)
{
    DateTimeOffset now = TimeProvider.System.GetLocalNow();
    BitConverter.TryWriteBytes(picture.AsSpan(4), now.Ticks);
    string[] photos = i % 5 == 0 ? [studio.Photos.Keep(new MemoryStream([.. picture, .. new byte[20_000]]))!] : [];
    var document = new BatchStep(StepKind.Alkali) { Values = [Measured.Of("amount", $"{i} g", Mass.FromGrams(i))], Note = new string('x', i % 700), Photos = photos };
    EntryId id = EntryId.New(now);
    if (studio.Append(document.ToEntry(id, SubjectKey.Batch(26, 1 + (i % 3)), now)) is AppendResult.Kept)
        await Console.Out.WriteLineAsync(id.Text);
}
