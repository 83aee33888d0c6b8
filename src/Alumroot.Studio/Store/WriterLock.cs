namespace Alumroot.Studio.Store;

/// <summary>Held by the one program that writes. The system lets go of it when that program ends, in whatever way.</summary>
internal sealed class WriterLock : IDisposable
{
    public const string FileName = "studio.lock";

    private static readonly TimeSpan BetweenTries = TimeSpan.FromMilliseconds(50);

    private readonly FileStream _held;

    private WriterLock(FileStream held) => _held = held;

    /// <summary>Takes the lock.</summary>
    /// <param name="folder">The studio's folder.</param>
    /// <param name="wait">How long to wait for another program to let go.</param>
    /// <exception cref="StudioException">Another program holds it, or the file cannot be written.</exception>
    public static WriterLock Take(string folder, TimeSpan wait)
    {
        string file = Path.Combine(folder, FileName);
        long until = Environment.TickCount64 + (long)wait.TotalMilliseconds;
        while (true)
        {
            try
            {
                return new WriterLock(new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 1));
            }
            catch (IOException e) when (e.GetType() == typeof(IOException) && File.Exists(file))
            {
                if (Environment.TickCount64 >= until) throw new StudioException(new StudioFailure(TroubleKind.Locked, e.Message), e);
                Thread.Sleep(BetweenTries);
            }
        }
    }

    public void Dispose() => _held.Dispose();
}
