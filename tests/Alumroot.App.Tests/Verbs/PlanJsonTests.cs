using System.Text.Json;
using Alumroot.App.Output;

namespace Alumroot.App.Tests.Verbs;

/// <summary>The fields of a plan's JSON. Scripts rely on them: names are added, never taken away.</summary>
public sealed class PlanJsonTests
{
    private const string Madder = "plan --dyestuff madder --dry 100g --water 3L --salt potash-alum --salt-amount 50g --alkali soda-ash --temp 60C --to-ph 6.5 --json";

    private static readonly string[] Predicted =
    [
        "amounts.alkali_g", "start_ph", "end.ph", "end.gas_l", "precision.alkali_g_per_0_1_ph", "telling_reading.ph_if_hydroxide", "telling_reading.ph_if_basic_sulfate",
        "end_ph_gas_held", "end_ph_gas_gone", "yield_g", "curve[].ph", "curve[].gas_l", "curve[].solid_g", "curve[].dissolved_metal_mg_per_l", "solids[].g",
        "wash[].conductivity_us_cm_25c", "wash[].salt_left_g", "rule_of_thumb[].ph_there", "end.ionic_strength",
    ];

    private static readonly string[] Plain =
    [
        "inputs.salt", "inputs.alkali", "inputs.dyestuff", "inputs.dry_g", "inputs.water_ml", "inputs.temperature_c", "amounts.salt_g", "amounts.salt_water_ml", "amounts.alkali_water_ml",
        "end.vessel_least_l", "telling_reading.at_alkali_g", "curve[].alkali_g", "solids[].name", "wash[].wash", "wash[].water_ml", "rule_of_thumb[].rule",
        "cautions[].key", "cautions[].text", "cautions[].severity", "assumptions[].text", "assumptions[].source",
    ];

    [Fact]
    public async Task Every_field_of_the_contract_is_there_and_predictions_have_spans()
    {
        using JsonDocument plan = await Json(Madder);
        foreach (string path in Predicted)
            foreach (JsonElement e in Find(plan.RootElement, path))
            {
                Assert.True(e.ValueKind == JsonValueKind.Object, path);
                double value = e.GetProperty("value").GetDouble(), low = e.GetProperty("low").GetDouble(), high = e.GetProperty("high").GetDouble();
                Assert.True(low <= value && value <= high, $"{path}: {e}");
                Assert.Equal(3, e.EnumerateObject().Count());
            }
        foreach (string path in Plain)
            foreach (JsonElement e in Find(plan.RootElement, path))
                Assert.True(e.ValueKind is JsonValueKind.Number or JsonValueKind.String, $"{path}: {e}");
    }

    [Fact]
    public async Task The_json_is_one_document_and_messages_are_elsewhere()
    {
        Command run = await Command.Of(Madder);
        Assert.Equal(ExitCode.Done, run.Code);
        using JsonDocument plan = JsonDocument.Parse(run.Data);
        Assert.Equal(JsonValueKind.Object, plan.RootElement.ValueKind);
        Assert.DoesNotContain("{", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Millilitres_of_a_poured_alkali_are_named_so()
    {
        using JsonDocument plan = await Json("plan --salt potash-alum --salt-amount 20g --water 1L --alkali ammonia@10% --all-down --json");
        Assert.True(plan.RootElement.GetProperty("amounts").GetProperty("alkali_ml").GetProperty("value").GetDouble() > 10);
        // 10 % ammonia weighs 0.958 g/mL at 20 C (table of ammonia solutions in the catalogue).
        double grams = plan.RootElement.GetProperty("amounts").GetProperty("alkali_g").GetProperty("value").GetDouble();
        Assert.Equal(0.958, grams / plan.RootElement.GetProperty("amounts").GetProperty("alkali_ml").GetProperty("value").GetDouble(), 0.01);
    }

    /// <summary>Two salts are two entries; base for both, 3 for each aluminium and 2 for each iron(II) (formula masses, IUPAC 2021 conventional atomic weights).</summary>
    [Fact]
    public async Task Two_salts_are_both_reckoned()
    {
        using JsonDocument plan = await Json("plan --salt potash-alum --salt-amount 20g --second-salt iron-sulfate --second-salt-amount 5g --water 1L --alkali soda-ash --all-down --json");
        Assert.Equal(2, plan.RootElement.GetProperty("amounts").GetProperty("salts").GetArrayLength());
        double needed = plan.RootElement.GetProperty("amounts").GetProperty("alkali_stoichiometric_g").GetDouble();
        Assert.Equal(20 * 0.3351 + 5 * 0.3812, needed, 0.01);
    }

    [Fact]
    public async Task Amounts_held_back_are_nowhere_in_the_json_or_the_table()
    {
        const string small = "plan --salt potash-alum --salt-amount 50g --alkali soda-ash --water 3L --vessel 2L";
        foreach (string form in (string[])["--json", "--csv", "", "--quiet"])
        {
            Command run = await Command.Of($"{small} {form}");
            Assert.Equal(ExitCode.CannotBeMet, run.Code);
            Assert.Contains("Change this first", run.Messages, StringComparison.Ordinal);
            foreach (string word in (string[])["alkali_g", "curve", "Do\n", "soda ash  "]) Assert.DoesNotContain(word, run.Data, StringComparison.Ordinal);
        }
    }

    private static async Task<JsonDocument> Json(string line)
    {
        Command run = await Command.Of(line);
        Assert.True(run.Code == ExitCode.Done, run.Messages);
        return JsonDocument.Parse(run.Data);
    }

    private static IEnumerable<JsonElement> Find(JsonElement at, string path)
    {
        string[] parts = path.Split('.', 2);
        string name = parts[0].TrimEnd('[', ']');
        Assert.True(at.TryGetProperty(name, out JsonElement next), $"there is no {path}");
        JsonElement[] all = parts[0].EndsWith(']') ? [.. next.EnumerateArray()] : [next];
        Assert.NotEmpty(all);
        return parts.Length == 1 ? all : all.SelectMany(e => Find(e, parts[1]));
    }
}
