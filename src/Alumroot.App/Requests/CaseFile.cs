using System.Globalization;
using Alumroot.App.Output;
using Alumroot.Quantities.Tables;
using Alumroot.Studio.Exchange;

namespace Alumroot.App.Requests;

/// <summary>One case of a file: what is asked, and the named inputs.</summary>
/// <param name="row">The row it stands in, for complaints.</param>
public sealed class CaseRow(TableRow row)
{
    private readonly Dictionary<string, string> _inputs = Split(row);

    /// <summary>The name of the case.</summary>
    public string Id { get; } = row["id"];

    /// <summary>What is asked.</summary>
    public string Kind { get; } = row["kind"];

    /// <summary>An input as text.</summary>
    /// <exception cref="TableException">It is missing.</exception>
    public string Text(string name) => _inputs.TryGetValue(name, out string? text) ? text : throw Wrong($"\"{name}\" is missing");

    /// <summary>An input as text, or null.</summary>
    public string? OptionalText(string name) => _inputs.GetValueOrDefault(name);

    /// <summary>An input as a number.</summary>
    /// <exception cref="TableException">It is missing or no finite number.</exception>
    public double Number(string name)
    {
        string text = Text(name);
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : throw Wrong($"\"{name}={text}\" is not a number written like 1.5");
    }

    /// <summary>An input as a number that is not negative.</summary>
    /// <exception cref="TableException">It is missing, no number, or negative.</exception>
    public double Amount(string name) => Number(name) is var x and >= 0 ? x : throw Wrong($"\"{name}\" is below nothing");

    /// <summary>An input as a number above zero.</summary>
    /// <exception cref="TableException">It is missing, no number, or not above zero.</exception>
    public double Positive(string name) => Number(name) is var x and > 0 ? x : throw Wrong($"\"{name}\" must be more than nothing");

    /// <summary>A complaint about the inputs of this case.</summary>
    public TableException Wrong(string what) => row.Wrong("inputs", what);

    /// <summary>A complaint about what is asked.</summary>
    /// <param name="known">Kinds that would be understood.</param>
    public TableException UnknownKind(IEnumerable<string> known) => row.Wrong("kind", $"\"{Kind}\" is none of {string.Join(", ", known)}");

    private static Dictionary<string, string> Split(TableRow row)
    {
        var inputs = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string part in row["inputs"].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            int sign = part.IndexOf('=', StringComparison.Ordinal);
            if (sign < 1) throw row.Wrong("inputs", $"\"{part}\" is not of the form name=value");
            if (!inputs.TryAdd(part[..sign].Trim(), part[(sign + 1)..].Trim())) throw row.Wrong("inputs", $"\"{part[..sign].Trim()}\" is given twice");
        }
        return inputs;
    }
}

/// <summary>A file of cases with the columns id, kind and inputs (<c>name=value</c> parted by semicolons), answered as <c>id,name,value</c>.</summary>
public static class CaseFile
{
    private const long LargestFileBytes = 16 << 20;

    /// <summary>Answers every case of a file. A case that cannot be answered is named on the messages and the others are answered all the same.</summary>
    /// <param name="path">The file.</param>
    /// <param name="answer">The named results of a case, numbers or texts; throws <see cref="TableException"/> when its inputs are wrong.</param>
    /// <param name="channels">Where the answers and the complaints go.</param>
    /// <returns>The exit code.</returns>
    public static int Answer(string path, Func<CaseRow, IEnumerable<(string Name, object Value)>> answer, Channels channels)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(channels);
        try
        {
            var file = new FileInfo(path);
            if (file.Exists && file.Length > LargestFileBytes) return channels.End(ExitCode.InputWrong, $"{file.Name} holds {file.Length >> 20} MiB; at most {LargestFileBytes >> 20} MiB are read, so split it.");
            Table table = Table.Parse(Path.GetFileName(path), File.ReadAllText(path));
            foreach (string column in (string[])["id", "kind", "inputs"])
                if (!table.Has(column)) return channels.End(ExitCode.InputWrong, $"{table.Name}: the column {column} is missing. A file of cases has the columns id, kind and inputs.");
            channels.Data.Write(Csv.Line("id", "name", "value"));
            bool all = true;
            foreach (TableRow row in table.Rows) all &= Row(row, answer, channels);
            return all ? ExitCode.Done : ExitCode.InputWrong;
        }
        catch (TableException e)
        {
            return channels.End(ExitCode.InputWrong, e.Message);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return channels.End(ExitCode.InputWrong, $"The file of cases could not be read: {e.Message}");
        }
    }

    private static bool Row(TableRow row, Func<CaseRow, IEnumerable<(string Name, object Value)>> answer, Channels channels)
    {
        try
        {
            var asked = new CaseRow(row);
            foreach ((string name, object value) in answer(asked).ToList()) channels.Data.Write(Csv.Line(asked.Id, name, value));
            return true;
        }
        catch (TableException e)
        {
            channels.Messages.WriteLine(e.Message);
            return false;
        }
    }
}
