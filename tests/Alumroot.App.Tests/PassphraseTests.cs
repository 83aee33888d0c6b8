using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Alumroot.App.Output;
using Alumroot.App.Sharing;
using Alumroot.App.Studio;
using ZXing;
using ZXing.Common;

namespace Alumroot.App.Tests;

public sealed partial class PassphraseTests : IDisposable
{
    private readonly DemoStudio _studio = DemoStudio.Open(TimeProvider.System);
    private readonly StringWriter _said = new();

    private Channels Channels => new(TextWriter.Null, _said);

    public void Dispose()
    {
        _studio.Dispose();
        _said.Dispose();
    }

    /// <summary>RFC 7914, section 11: PBKDF2 with HMAC-SHA-256, the first 32 bytes.</summary>
    [Theory]
    [InlineData("passwd", "salt", 1, "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc")]
    [InlineData("Password", "NaCl", 80_000, "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56")]
    public void It_is_stretched_as_the_standard_says(string words, string salt, int iterations, string expected)
    {
        var kept = new Passphrase(iterations, Encoding.UTF8.GetBytes(salt), Convert.FromHexString(expected));
        Assert.True(kept.Matches(words));
        Assert.False(kept.Matches(words.ToUpperInvariant()));
        Assert.False(kept.Matches(null));
    }

    [Fact]
    public void It_is_kept_stretched_for_its_owner_alone_and_leaves_with_no_copy()
    {
        string folder = _studio.Store.Folder, file = Path.Combine(folder, "words.txt");
        File.WriteAllText(file, "madder under soft water\nanother line\n");
        Passphrase first = PassphraseSource.Find(folder, file, null, Channels)!;
        Assert.True(first.Matches("madder under soft water"));
        Assert.True(first.Iterations >= 600_000);
        string kept = Path.Combine(folder, "share.json");
        Assert.DoesNotContain("madder", File.ReadAllText(kept), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(kept));
        // The next start needs no words, and the cookies that were given out go on counting.
        Assert.Equal(first.Salt, PassphraseSource.Find(folder, null, null, Channels)!.Salt);
        Assert.Equal(first.Salt, PassphraseSource.Find(folder, file, null, Channels)!.Salt);

        string zip = Path.Combine(folder, "all.zip");
        _studio.Store.Export(zip, "0.1.0");
        using (ZipArchive archive = ZipFile.OpenRead(zip)) Assert.DoesNotContain(archive.Entries, e => e.FullName.Contains("share", StringComparison.Ordinal) || e.FullName.Contains("key", StringComparison.Ordinal));
        string copies = Path.Combine(folder, "elsewhere");
        _studio.Store.Backup(copies);
        Assert.DoesNotContain(Directory.EnumerateFiles(copies, "*", SearchOption.AllDirectories), f => f.EndsWith("share.json", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_words_or_with_too_few_it_is_not_shared_and_says_why()
    {
        string folder = _studio.Store.Folder;
        Assert.Null(PassphraseSource.Find(folder, null, null, Channels));
        Assert.Contains("--passphrase-file", _said.ToString(), StringComparison.Ordinal);
        Assert.Null(PassphraseSource.Find(folder, null, () => "short", Channels));
        Assert.Contains("this one has 5", _said.ToString(), StringComparison.Ordinal);
        Assert.Null(PassphraseSource.Find(folder, Path.Combine(folder, "none.txt"), null, Channels));
        Assert.Contains("could not be read", _said.ToString(), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "share.json")));
        Assert.NotNull(PassphraseSource.Find(folder, null, () => "four plain words here", Channels));
        // A damaged file is not trusted: it is asked for anew.
        File.WriteAllText(Path.Combine(folder, "share.json"), "{");
        Assert.Null(PassphraseSource.Find(folder, null, null, Channels));
    }

    /// <summary>Read back by a program of its own (ZXing), from the path of the page and from the characters of the terminal.</summary>
    [Theory]
    [InlineData("http://192.168.178.23:8787")]
    [InlineData("http://[fd00::2]:8787")]
    public void The_code_reads_back(string address)
    {
        var code = new QrPicture(address);
        var drawn = new bool[code.Side, code.Side];
        foreach (Match run in Run().Matches(code.Path()))
            for (int x = 0; x < Number(run, 3); x++) drawn[Number(run, 2), Number(run, 1) + x] = true;
        Assert.Equal(address, Read(drawn));

        var typed = new bool[code.Side, code.Side];
        string[] lines = code.Text().TrimEnd('\r', '\n').Split(Environment.NewLine);
        for (int y = 0; y < code.Side; y++)
            for (int x = 0; x < code.Side; x++)
                typed[y, x] = y % 2 == 0 ? lines[y / 2][x] is ' ' or '▄' : lines[y / 2][x] is ' ' or '▀';
        Assert.Equal(address, Read(typed));
    }

    private static string? Read(bool[,] dark)
    {
        const int scale = 6;
        int side = dark.GetLength(0) * scale;
        byte[] grey = new byte[side * side];
        for (int y = 0; y < side; y++)
            for (int x = 0; x < side; x++) grey[(y * side) + x] = dark[y / scale, x / scale] ? (byte)0 : (byte)255;
        var bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(grey, side, side, RGBLuminanceSource.BitmapFormat.Gray8)));
        return new ZXing.QrCode.QRCodeReader().decode(bitmap)?.Text;
    }

    private static int Number(Match run, int group) => int.Parse(run.Groups[group].Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"M(\d+) (\d+)h(\d+)v1h-\d+z")]
    private static partial Regex Run();
}
