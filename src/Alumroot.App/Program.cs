using System.Runtime.InteropServices;
using Alumroot.App.Output;
using Alumroot.App.Verbs;

namespace Alumroot.App;

/// <summary>The door of the executable: hands the words typed to the verbs and turns Ctrl-C into an orderly end.</summary>
internal sealed class Program
{
    private static async Task<int> Main(string[] args)
    {
        using var stop = new CancellationTokenSource();
        bool interrupted = false;

        void End(PosixSignalContext signal)
        {
            signal.Cancel = true;
            interrupted = signal.Signal == PosixSignal.SIGINT;
            stop.Cancel();
        }

        using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, End);
        using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        try
        {
            int code = await CommandLine.RunAsync(args, new Channels(Console.Out, Console.Error), stop.Token).ConfigureAwait(false);
            return interrupted ? ExitCode.Interrupted : code;
        }
        catch (OperationCanceledException) when (interrupted)
        {
            return ExitCode.Interrupted;
        }
    }
}
