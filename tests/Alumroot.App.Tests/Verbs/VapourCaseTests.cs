using System.Globalization;
using Alumroot.App.Output;

namespace Alumroot.App.Tests.Verbs;

/// <summary>The arithmetic of vapours by cases from a file.</summary>
public sealed class VapourCaseTests : IDisposable
{
    // Worked by hand from the ideal gas law (24.0552 L/mol at 20 °C, 24.4655 at 25 °C) and the figures of the pocket guide for each solvent.
    private static readonly (string Kind, string Inputs, string Expected)[] Worked =
    [
        ("solvent_all_evaporated", "solvent=ethanol;ml=100;room_m3=20;temp_c=20", "vapour_l=41.197064;ppm=2059.8532;mg_per_m3=3945;pct_lel=6.2419793;times_oel=2.0598532"),
        ("solvent_all_evaporated", "solvent=isopropanol;ml=250;room_m3=30;temp_c=20", "vapour_l=78.549362;ppm=2618.3121;mg_per_m3=6541.6667;pct_lel=13.09156;times_oel=6.5457802"),
        ("solvent_all_evaporated", "solvent=acetone;ml=50;room_m3=12;temp_c=20", "vapour_l=16.380507;ppm=1365.0423;pct_lel=5.4601691;times_oel=5.4601691"),
        ("solvent_all_evaporated", "solvent=turpentine;ml=10;room_m3=15;temp_c=20", "ppm=101.25991;mg_per_m3=573.33333;pct_lel=1.2657489;times_oel=1.0125991"),
        ("solvent_all_evaporated", "solvent=mineral-spirits;ml=30;room_m3=25;temp_c=20", "vapour_l=4.020641;ppm=160.82564;pct_lel=2.2975091"),
        ("solvent_ventilated", "solvent=isopropanol;evaporation_g_per_h=60;room_m3=30;air_changes_per_h=0.5;hours=2;temp_c=20", "ppm=1012.0289;steady_ppm=1601.0061"),
        ("solvent_ventilated", "solvent=ethanol;evaporation_g_per_h=120;room_m3=40;air_changes_per_h=4;hours=1;temp_c=20", "ppm=384.43453;steady_ppm=391.60707"),
        ("co2_potash_alum_full_neutralised", "alum_g=100;room_m3=20;temp_c=20;background_ppm=420", "co2_mol=0.31619554;co2_l=7.6061206;added_ppm=380.30603;total_ppm=800.30603"),
        ("co2_potash_alum_full_neutralised", "alum_g=2500;room_m3=8;temp_c=25;background_ppm=420", "co2_mol=7.9048884;co2_l=193.39629;added_ppm=24174.536"),
        ("co2_bicarbonate", "bicarbonate_g=10;temp_c=20", "co2_mol=0.1190377;co2_l=2.8634658"),
        ("co2_sodium_carbonate", "carbonate_g=25;temp_c=20", "co2_mol=0.23587576;co2_l=5.674019"),
        ("ammonia_all_released", "ml=100;density_g_per_ml=0.957;mass_pct=10;room_m3=20;temp_c=20", "nh3_g=9.57;nh3_l=13.516967;ppm=675.84836;times_idlh=2.2528279"),
        ("ammonia_free_fraction", "ph=9.0;pka=9.25", "fraction=0.359935"),
        ("hydrogen_from_aluminium", "al_g=2;temp_c=20", "h2_l=2.6745738"),
    ];

    private readonly string _folder = Directory.CreateTempSubdirectory("alumroot-cases-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task Every_worked_case_comes_out()
    {
        Command answer = await Ask([.. Worked.Select((w, i) => $"c{i},{w.Kind},{w.Inputs}")]);
        Assert.Equal(ExitCode.Done, answer.Code);
        Assert.Empty(answer.Messages);
        Dictionary<string, double> got = Values(answer.Data);
        for (int i = 0; i < Worked.Length; i++)
            foreach (string[] pair in Worked[i].Expected.Split(';').Select(p => p.Split('=')))
            {
                double expected = double.Parse(pair[1], CultureInfo.InvariantCulture);
                Assert.Equal(expected, got[$"c{i},{pair[0]}"], 1e-4 * expected);
            }
    }

    [Theory]
    [InlineData("co2_bicarbonate", "bicarbonate_g=-1;temp_c=20", "below nothing")]
    [InlineData("co2_bicarbonate", "bicarbonate_g=1;bicarbonate_g=2;temp_c=20", "given twice")]
    [InlineData("co2_bicarbonate", "temp_c=20", "\"bicarbonate_g\" is missing")]
    [InlineData("co2_bicarbonate", "bicarbonate_g=ten;temp_c=20", "is not a number")]
    [InlineData("solvent_all_evaporated", "solvent=moonshine;ml=1;room_m3=2;temp_c=20", "nothing is known of the solvent \"moonshine\"")]
    [InlineData("solvent_all_evaporated", "solvent=ethanol;ml=1;room_m3=0;temp_c=20", "more than nothing")]
    [InlineData("solvent_all_evaporated", "solvent=ammonia;ml=1;room_m3=2;temp_c=20", "is a gas")]
    [InlineData("solvent_all_evaporated", "solvent=ethanol;ml=1;room_m3=2;temp_c=400", "no temperature of a room")]
    [InlineData("boiling", "x=1", "is none of")]
    public async Task A_wrong_case_is_named_and_the_others_are_answered(string kind, string inputs, string said)
    {
        Command answer = await Ask($"bad,{kind},{inputs}", "good,ammonia_free_fraction,ph=9.25;pka=9.25");
        Assert.Equal(ExitCode.InputWrong, answer.Code);
        Assert.Contains(said, answer.Messages, StringComparison.Ordinal);
        Assert.Equal(0.5, Values(answer.Data)["good,fraction"], 9);
    }

    [Fact]
    public async Task Words_and_cases_do_not_go_together_and_one_is_needed()
    {
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["lookup"])).Code);
        Assert.Equal(ExitCode.InputWrong, (await Command.Of(["lookup", "madder", "--cases", "x.csv"])).Code);
        Command missing = await Command.Of(["lookup", "--cases", Path.Combine(_folder, "nothing.csv")]);
        Assert.Equal(ExitCode.InputWrong, missing.Code);
        Assert.Contains("could not be read", missing.Messages, StringComparison.Ordinal);
    }

    private async Task<Command> Ask(params string[] rows)
    {
        string file = Path.Combine(_folder, "cases.csv");
        await File.WriteAllLinesAsync(file, ["id,kind,inputs", .. rows], TestContext.Current.CancellationToken);
        return await Command.Of(["lookup", "--cases", file]);
    }

    private static Dictionary<string, double> Values(string data) =>
        data.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(l => l.Trim().Split(',')).ToDictionary(c => $"{c[0]},{c[1]}", c => double.Parse(c[2], CultureInfo.InvariantCulture));
}
