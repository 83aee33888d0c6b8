namespace Alumroot.Architecture.Tests;

/// <summary>A file is one room: short enough to read at a sitting.</summary>
public class FileSizeTests
{
    private static IReadOnlyList<(string File, int Lines)> Sizes(string folder) =>
        [.. Repository.Files(folder, ".cs", ".razor", ".css", ".js").Select(f => (Repository.Relative(f), File.ReadLines(f).Count()))];

    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    [InlineData("benchmarks")]
    public void No_file_is_longer_than_500_lines(string folder)
    {
        string[] tooLong = [.. Sizes(folder).Where(f => f.Lines > 500).Select(f => $"{f.File} has {f.Lines} lines")];
        Assert.True(tooLong.Length == 0, string.Join("\n", tooLong));
    }

    [Fact]
    public void Half_the_files_are_below_100_lines_and_nine_in_ten_below_300()
    {
        int[] lines = [.. Sizes("src").Select(f => f.Lines).Order()];
        Assert.True(lines.Length > 20, "The files of src were not found.");
        Assert.True(lines[lines.Length / 2] < 100, $"The middle file of src has {lines[lines.Length / 2]} lines.");
        Assert.True(lines[lines.Length * 9 / 10] < 300, $"One file of src in ten has {lines[lines.Length * 9 / 10]} lines or more.");
    }
}
