using System.CommandLine;
using System.Globalization;
using Alumroot.App.Hosting;
using Alumroot.App.Output;
using Alumroot.App.Sharing;
using Alumroot.App.Studio;
using Alumroot.App.Words;
using Alumroot.Studio;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot serve</c>: the web pages on this machine.</summary>
public static class ServeVerb
{
    /// <summary>The word typed.</summary>
    public const string Name = "serve";

    /// <summary>The port taken unless another is named.</summary>
    public const int UsualPort = 8787;

    /// <summary>The verb with its options.</summary>
    /// <param name="channels">Where it writes.</param>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var studio = new Option<string?>("--studio") { HelpName = "DIR", Description = "the folder of your studio, made when missing; your usual one when left out" };
        var demo = new Option<bool>("--demo") { Description = "open the demo studio, all invented; what is written there is thrown away at the end" };
        var port = new Option<int>("--port") { HelpName = "N", Description = $"the port to listen on, {UsualPort} when left out, any free one for 0", DefaultValueFactory = _ => UsualPort };
        port.Validators.Add(result =>
        {
            bool read = int.TryParse(result.Tokens is [var token, ..] ? token.Value : null, NumberStyles.Integer, CultureInfo.InvariantCulture, out int number);
            if (read && number is < 0 or > 65535)
                result.AddError($"'--port {result.Tokens[0].Value}' is outside 0 to 65535. Choose a port in that range, such as {UsualPort}.");
        });
        var share = new Option<bool>("--share") { Description = "let others on the local network in, who give a passphrase" };
        var passphrase = new Option<string?>("--passphrase-file") { HelpName = "FILE", Description = $"with --share: its first line is the passphrase; or set {PassphraseSource.Variable}" };
        var verb = new Verb(
            Name,
            "Opens the web pages on this machine only, and prints their address. This is what alumroot does when no verb is given.",
            "alumroot serve --demo",
            "alumroot serve --studio ~/my-studio",
            "alumroot serve --share");
        verb.Add(studio);
        verb.Add(demo);
        verb.Add(port);
        verb.Add(share);
        verb.Add(passphrase);
        verb.SetAction((parsed, cancellation) => ServeAsync(
            parsed.GetValue(studio), new AppOptions { Demo = parsed.GetValue(demo), Port = parsed.GetValue(port) }, parsed.GetValue(share), parsed.GetValue(passphrase), channels, cancellation));
        return verb;
    }

    private static async Task<int> ServeAsync(string? folder, AppOptions options, bool share, string? passphraseFile, Channels channels, CancellationToken cancellation)
    {
        if (folder is not null && options.Demo)
            return channels.End(ExitCode.InputWrong, "'--studio' and '--demo' name two studios. Give one of them.");
        if (passphraseFile is not null && !share)
            return channels.End(ExitCode.InputWrong, "'--passphrase-file' is of use only with '--share'. Add that, or leave it out.");
        string place = StudioPlace.Of(folder);
        try
        {
            using DemoStudio? demo = options.Demo ? DemoStudio.Open(options.Clock) : null;
            using StudioStore? own = demo is null ? StudioStore.Open(place, StudioAccess.Write, options.Clock) : null;
            StudioStore store = own ?? demo!.Store;
            if (share)
            {
                Func<string?>? typed = Console.IsInputRedirected ? null : Console.In.ReadLine;
                if (PassphraseSource.Find(store.Folder, passphraseFile, typed, channels) is not { } passphrase) return ExitCode.InputWrong;
                options = options with { Share = passphrase };
            }
            return await ServeAsync(store, options, channels, cancellation).ConfigureAwait(false);
        }
        catch (StudioException e)
        {
            return channels.End(ExitCode.RecordTrouble, StudioWords.Of(e.Failure, place));
        }
    }

    private static async Task<int> ServeAsync(StudioStore studio, AppOptions options, Channels channels, CancellationToken cancellation)
    {
        WebApplication app = AppHost.Build(options, studio);
        await using (app.ConfigureAwait(false))
        {
            try
            {
                await app.StartAsync(cancellation).ConfigureAwait(false);
            }
            catch (IOException)
            {
                return channels.End(ExitCode.CannotBeMet, $"Port {options.Port} is taken by another program. Close that one, or choose another port with --port 0.");
            }
            string address = options.Share is null ? app.Urls.First() : $"http://localhost:{new Uri(app.Urls.First()).Port}";
            await channels.Data.WriteLineAsync(address).ConfigureAwait(false);
            await channels.Messages.WriteLineAsync($"Open {address} in a browser on this machine. Ctrl-C ends it.").ConfigureAwait(false);
            if (options.Share is not null) SharedAddresses(app.Services.GetRequiredService<Share>(), new Uri(address).Port, channels.Messages);
            Desktop.TryOpen(address);
            await WaitAsync(cancellation).ConfigureAwait(false);
            await app.StopAsync(CancellationToken.None).ConfigureAwait(false);
        }
        return ExitCode.Done;
    }

    private static void SharedAddresses(Share share, int port, TextWriter messages)
    {
        string[] addresses = [.. share.Names.Select(n => string.Create(CultureInfo.InvariantCulture, $"http://{n}:{port}"))];
        messages.WriteLine($"Others on this network open {string.Join(" or ", addresses)} and give the passphrase. What is sent is not encrypted: share in a network that you trust.");
        messages.Write(new QrPicture(addresses[0]).Text());
    }

    private static async Task WaitAsync(CancellationToken cancellation)
    {
        var stopped = new TaskCompletionSource();
        await using CancellationTokenRegistration registration = cancellation.Register(stopped.SetResult);
        await stopped.Task.ConfigureAwait(false);
    }
}
