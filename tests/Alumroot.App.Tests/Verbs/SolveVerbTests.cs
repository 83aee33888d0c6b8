using System.Globalization;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.Quantities.Tables;

namespace Alumroot.App.Tests.Verbs;

/// <summary>How <c>alumroot solve</c> reads cases and writes rows.</summary>
public sealed class SolveVerbTests : IDisposable
{
    private const string Header = "case,temperature_c,gas,start_water_kg,start_reagents_mol,titrant,solids_allowed";
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("alumroot-solve");

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>The columns that scripts were promised; names are added, never taken away.</summary>
    [Fact]
    public async Task The_columns_of_the_contract_are_there()
    {
        (_, Table rows) = await Solve("one,25,vented,1,potassium-alum-dodecahydrate=0.05,sodium-carbonate,Al(OH)3(a)", "one,0,0");
        string[] promised = "case,step,titrant_mol_total,ph,ionic_strength_molal,water_kg,gas_evolved_mol_total,dissolved_al_molal,dissolved_ca_molal,dissolved_mg_molal,dissolved_c_molal,dissolved_s_molal,dissolved_zn_molal,dissolved_cu_molal,dissolved_fe2_molal,dissolved_fe3_molal,dissolved_sn2_molal,al3_molal,aloh4_molal,hco3_molal,co3_molal,co2_molal,solids_mol".Split(',');
        Assert.All(promised, column => Assert.Contains(column, rows.Columns));
        Assert.Equal("error", rows.Columns[^1]);
    }

    [Theory]
    [InlineData("one,25,closed,1,potassium-alum-dodecahydrate=0.05,,Unobtainium", "cases.csv line 2, column solids_allowed: nothing is known of the solid \"Unobtainium\"")]
    [InlineData("one,25,closed,1,moonstone=0.05,,", "cases.csv line 2, column start_reagents_mol: nothing is known of the reagent \"moonstone\"")]
    [InlineData("one,warm,closed,1,,,", "cases.csv line 2, column temperature_c")]
    [InlineData("one,25,ajar,1,,,", "cases.csv line 2, column gas: \"ajar\" is none of closed, air, vented")]
    [InlineData("one,25,closed,-1,,,", "cases.csv line 2, column start_water_kg")]
    public async Task A_field_that_cannot_be_used_is_exit_2_and_names_line_and_column(string row, string expected)
    {
        Command run = await Run(row, "one,0,0");
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
        Assert.Empty(run.Data);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_exit_2()
    {
        Command run = await Command.Of(["solve", Path.Combine(_folder.FullName, "missing.csv")]);
        Assert.Equal(ExitCode.InputWrong, run.Code);
        Assert.Contains("could not be read", run.Messages, StringComparison.Ordinal);
    }

    /// <summary>A mole of magnesia takes up a mole of water; a gram of water cannot give it. The row has an error and no pH; the case beside it is solved.</summary>
    [Fact]
    public async Task A_case_that_cannot_be_is_a_row_with_an_error_and_exit_1()
    {
        (int code, Table rows) = await Solve("dry,25,closed,0.001,magnesium-oxide=1,,Mg(OH)2(active)\nwet,25,closed,1,acetic-acid=0.1,,", "dry,0,0\nwet,0,0");
        Assert.Equal(ExitCode.CannotBeMet, code);
        Assert.Equal("", rows.Rows[0]["ph"]);
        Assert.NotEqual("", rows.Rows[0]["error"]);
        Assert.Equal("", rows.Rows[1]["error"]);
        // 0.1 mol/L acetic acid reads pH 2.88 (Ka 1.75e-5, any textbook of general chemistry; from memory).
        Assert.Equal(2.88, rows.Rows[1].Number("ph"), 0.02);
    }

    [Fact]
    public async Task Json_holds_the_same_rows()
    {
        const string row = "one,25,closed,1,acetic-acid=0.1,,";
        (_, Table rows) = await Solve(row, "one,0,0");
        Command json = await Run(row, "one,0,0", "--json");
        using JsonDocument document = JsonDocument.Parse(json.Data);
        Assert.Equal(rows.Rows[0].Number("ph"), document.RootElement[0].GetProperty("ph").GetDouble(), 9);
        Assert.Equal(JsonValueKind.Null, document.RootElement[0].GetProperty("error").ValueKind);
    }

    /// <summary>Exact derivatives against solving again a little to each side.</summary>
    [Theory]
    [InlineData("potassium-alum-dodecahydrate_mol", "25", "1", 0.05, 1e-4)]
    [InlineData("temperature_k", "25", "1", 25, 0.05)]
    [InlineData("water_kg", "25", "1", 1, 1e-3)]
    [InlineData("titrant_mol", "25", "1", 0.04, 1e-5)]
    public async Task Sensitivities_agree_with_solving_again(string input, string celsius, string water, double at, double step)
    {
        async Task<TableRow> Row(double value)
        {
            string text = value.ToString("R", CultureInfo.InvariantCulture);
            string alum = input.StartsWith("potassium", StringComparison.Ordinal) ? text : "0.05", soda = input == "titrant_mol" ? text : "0.04";
            string row = $"one,{(input == "temperature_k" ? text : celsius)},closed,{(input == "water_kg" ? text : water)},potassium-alum-dodecahydrate={alum},sodium-carbonate,Al(OH)3(a)";
            return (await Solve(row, $"one,1,{soda}", "--sensitivities")).Rows.Rows[0];
        }
        double difference = ((await Row(at + step)).Number("ph") - (await Row(at - step)).Number("ph")) / (2 * step);
        double exact = double.Parse((await Row(at))["d_ph_by"].Split(' ').Single(p => p.StartsWith(input + "=", StringComparison.Ordinal)).Split('=')[1], CultureInfo.InvariantCulture);
        Assert.NotEqual(0, exact);
        Assert.Equal(difference, exact, Math.Abs(exact) * 1e-3 + 1e-6);
    }

    /// <summary>The same case under the Davies constants of the reference equilibria (tests/Alumroot.Chemistry.Tests/Data): 0.1 mol/kg potash alum reads 4.06623 there.</summary>
    [Fact]
    public async Task Other_constants_are_taken_from_a_folder()
    {
        const string row = "one,25,closed,1,potassium-alum-dodecahydrate=0.1,,";
        (_, Table embedded) = await Solve(row, "one,0,0");
        (_, Table davies) = await Solve(row, "one,0,0", "--constants", Path.Combine(AppContext.BaseDirectory, "Davies"));
        Assert.Equal(4.06623, davies.Rows[0].Number("ph"), 0.002);
        Assert.NotEqual(4.06623, embedded.Rows[0].Number("ph"), 0.02);
        Command missing = await Run(row, "one,0,0", "--constants", _folder.FullName);
        Assert.Equal(ExitCode.InputWrong, missing.Code);
        Assert.Contains("constants_species.csv", missing.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_steps_each_case_is_solved_as_it_starts()
    {
        string cases = Path.Combine(_folder.FullName, "cases.csv");
        await File.WriteAllTextAsync(cases, $"{Header}\none,25,closed,1,acetic-acid=0.1,,\n", TestContext.Current.CancellationToken);
        Command run = await Command.Of(["solve", cases]);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Single(Table.Parse("out", run.Data).Rows);
    }

    private async Task<(int Code, Table Rows)> Solve(string rows, string steps, params string[] words)
    {
        Command run = await Run(rows, steps, words);
        return (run.Code, Table.Parse("out", run.Data));
    }

    private async Task<Command> Run(string rows, string steps, params string[] words)
    {
        string cases = Path.Combine(_folder.FullName, "cases.csv"), file = Path.Combine(_folder.FullName, "steps.csv");
        await File.WriteAllTextAsync(cases, $"{Header}\n{rows}\n", TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(file, $"case,step,titrant_mol_total\n{steps}\n", TestContext.Current.CancellationToken);
        return await Command.Of(["solve", cases, "--steps", file, .. words]);
    }
}
