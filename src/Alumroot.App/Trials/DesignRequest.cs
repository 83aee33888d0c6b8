using System.Globalization;
using System.Text;
using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Trials.Design;

namespace Alumroot.App.Trials;

/// <summary>A row of jars as it is asked for in an address: one reading for the page that lays it out and the form that keeps it.</summary>
public sealed class DesignRequest
{
    /// <summary>The address of the page.</summary>
    public const string Path = "/trials/design";

    /// <summary>Names of the fields.</summary>
    public const string FactorsField = "factors", KindField = "kind", JarsField = "jars", ReplicatesField = "replicates", BlocksField = "blocks", PlanField = "plan", SeedField = "seed";

    private const int LongestField = 4000, MostWhole = 100_000, ProductsBelow = 5;
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);

    /// <summary>Every field.</summary>
    public static IReadOnlyList<string> Fields { get; } = [FactorsField, KindField, JarsField, ReplicatesField, BlocksField, PlanField, SeedField];

    /// <summary>What was typed in a field; null when nothing was.</summary>
    public string? this[string field] => _typed.GetValueOrDefault(field);

    /// <summary>The row; null when nothing was asked or something is wrong.</summary>
    public TrialDesign? Design { get; private set; }

    /// <summary>The amounts of each jar; null when no plan was given.</summary>
    public IReadOnlyList<JarPlan>? Plans { get; private set; }

    /// <summary>What is wrong, in a sentence; null when nothing is.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The seed of the order.</summary>
    public int Seed { get; private set; } = 1;

    /// <summary>The address that means this row.</summary>
    public string Address
    {
        get
        {
            var text = new StringBuilder(Path);
            foreach (string name in Fields)
                if (this[name] is { } typed) text.Append(text.Length == Path.Length ? '?' : '&').Append(name).Append('=').Append(Uri.EscapeDataString(typed));
            return text.ToString();
        }
    }

    /// <summary>Reads the fields and lays the row out.</summary>
    public static DesignRequest From(Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var request = new DesignRequest();
        foreach (string field in Fields)
            if (typed(field) is { } text && !string.IsNullOrWhiteSpace(text)) request._typed[field] = text.Trim()[..Math.Min(text.Trim().Length, LongestField)];
        if (request[FactorsField] is not null) request.Read();
        return request;
    }

    /// <summary>Takes the fields of an address, as <see cref="Address"/> gives it; null when it is not the address of a row.</summary>
    public static DesignRequest? FromAddress(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        if (!address.StartsWith(Path + "?", StringComparison.Ordinal)) return null;
        var fields = Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(address[Path.Length..]);
        return From(name => fields.TryGetValue(name, out var value) ? value.ToString() : null);
    }

    private void Read()
    {
        (IReadOnlyList<Factor> factors, string? trouble) = FactorLines.Read(this[FactorsField]!);
        int? jars = Whole(JarsField, ref trouble);
        int replicates = Whole(ReplicatesField, ref trouble) ?? 1, blocks = Whole(BlocksField, ref trouble) ?? 1;
        Seed = Whole(SeedField, ref trouble) ?? 1;
        PlanRequest? plan = this[PlanField] is { } address ? PlanRequest.FromAddress(address) : null;
        if (trouble is null && this[PlanField] is { } lost && plan is null) trouble = $"A plan for every jar: '{lost}' is not the address of a plan. Copy it from the plan's page; it holds {PlanRequest.Path}?";
        if ((Trouble = trouble) is not null) return;
        TrialKind kind = this[KindField] switch { "fraction" => TrialKind.Fraction, "best" => TrialKind.Best, "latin-square" => TrialKind.LatinSquare, _ => TrialKind.Full };
        switch (Designer.Design(new TrialRequest(factors, kind) { Jars = jars, Replicates = replicates, Blocks = blocks, Seed = (ulong)Seed, Interactions = kind != TrialKind.Best || factors.Count < ProductsBelow }))
        {
            case DesignOutcome.Made made:
                Design = made.Design;
                Plans = plan is null ? null : [.. made.Design.Jars.Select(j => JarPlan.Of(plan, factors, j))];
                break;
            case DesignOutcome.Refused refused:
                Trouble = TrialWords.Of(refused);
                break;
        }
    }

    private int? Whole(string field, ref string? trouble)
    {
        if (this[field] is not { } typed) return null;
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n is >= 1 and <= MostWhole) return n;
        trouble ??= $"'{typed}' is not a whole number from 1 up.";
        return null;
    }
}
