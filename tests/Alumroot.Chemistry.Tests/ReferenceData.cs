using Alumroot.Chemistry.Constants;
using Alumroot.Chemistry.Titration;
using Alumroot.Quantities.Tables;

namespace Alumroot.Chemistry.Tests;

/// <summary>One folder of reference equilibria with its own constants.</summary>
internal sealed class ReferenceData
{
    private static readonly Lazy<ReferenceData> DaviesData = new(() => new ReferenceData("davies"));
    private static readonly Lazy<ReferenceData> ExtendedData = new(() => new ReferenceData("extended"));

    private ReferenceData(string folder)
    {
        Constants = ConstantSet.Read(Load("constants_species.csv"), Load("constants_solids.csv"), Load("constants_debye_hueckel.csv"), Load("constants_reagents.csv"));
        Cases = CaseTable.Read(Load("cases.csv"), Constants).ToDictionary(c => c.Name, StringComparer.Ordinal);
        Expected = Load("expected.csv").Rows.ToLookup(r => r["case"], StringComparer.Ordinal);

        Table Load(string file) => Table.Parse($"{folder}/{file}", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", folder, file)));
    }

    public ConstantSet Constants { get; }

    public Dictionary<string, TitrationCase> Cases { get; }

    public ILookup<string, TableRow> Expected { get; }

    public static ReferenceData Of(string folder) => folder == "davies" ? DaviesData.Value : ExtendedData.Value;

    public static TheoryData<string, string> AllCases()
    {
        var data = new TheoryData<string, string>();
        foreach (string folder in (string[])["davies", "extended"])
            foreach (string name in Of(folder).Cases.Keys) data.Add(folder, name);
        return data;
    }
}
