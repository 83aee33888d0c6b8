using System.CommandLine;
using System.Text.Json;
using Alumroot.App.Output;
using Alumroot.App.Requests;
using Alumroot.App.Verbs.Plan;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Verbs;

/// <summary><c>alumroot plan</c>: amounts, path, gas, washes and yield of one lake.</summary>
public static class PlanVerb
{
    private static readonly (string Field, string Value, string Description)[] Fields =
    [
        (PlanFields.Salt, "SALT", "which salt the packet says, such as potash-alum; @98% for purity, +14H2O for a hydrate"),
        (PlanFields.SaltAmount, "MASS", "how much of it; by the rule for the dyestuff when left out"),
        (PlanFields.SecondSalt, "SALT", "a second salt in the same bath"),
        (PlanFields.SecondSaltAmount, "MASS", "how much of the second salt"),
        (PlanFields.Alkali, "ALKALI", "which alkali, such as soda-ash, home-baked@36.0%loss, ammonia@10%, lye@0.8mol/L"),
        (PlanFields.AlkaliStrength, "STRENGTH", "strength of ammonia in percent or of lye in mol/L"),
        (PlanFields.BakedBefore, "MASS", "home-baked soda: weight before baking"),
        (PlanFields.BakedAfter, "MASS", "home-baked soda: weight after baking"),
        (PlanFields.Dyestuff, "NAME", "which dyestuff; left out for plain substrate"),
        (PlanFields.Dry, "MASS", "how much dry dyestuff, such as 100g or 3.5oz"),
        (PlanFields.Fresh, "MASS", "how much fresh dyestuff, in place of --dry"),
        (PlanFields.Water, "VOLUME", "water of the liquor, such as 2L"),
        (PlanFields.Hardness, "HARDNESS", "hardness of that water, such as 14dH or 250ppm"),
        (PlanFields.LiquorPh, "PH", "pH of the liquor before anything is added"),
        (PlanFields.Order, "ORDER", "salt-first or alkali-first"),
        (PlanFields.Temperature, "TEMP", "temperature of the bath, such as 60C or 140F"),
        (PlanFields.ToPh, "PH", "the aim: a final pH; with --alkali-amount, a pH to check it against"),
        (PlanFields.AlkaliAmount, "AMOUNT", "the aim: so much alkali"),
        (PlanFields.Vessel, "VOLUME", "the vessel, such as 5L"),
        (PlanFields.Scale, "MASS", "smallest step of the scale, such as 0.1g"),
        (PlanFields.Strips, "STEP", "smallest step of the pH strips, such as 0.5"),
        (PlanFields.WashTo, "CONDUCTIVITY", "wash until the meter shows this, such as 500uS"),
        (PlanFields.WashWater, "KIND", "tap or pure"),
        (PlanFields.Kitchen, "WHOSE", "whose cups and pints: us, imperial or metric"),
        (PlanFields.Units, "UNITS", "metric or kitchen"),
    ];

    /// <summary>The verb with its options.</summary>
    public static Verb Build(Channels channels)
    {
        ArgumentNullException.ThrowIfNull(channels);
        var options = Fields.Select(f => (f.Field, Option: new Option<string?>("--" + f.Field) { HelpName = f.Value, Description = f.Description })).ToArray();
        var allDown = new Option<bool>("--all-down") { Description = "the aim: all the metal down" };
        var from = new Option<string?>("--from") { HelpName = "FILE", Description = "read the same fields from a JSON file, - for standard input" };
        var json = new Option<bool>("--json") { Description = "one JSON document, units in the names" };
        var csv = new Option<bool>("--csv") { Description = "the path as a table" };
        var quiet = new Option<bool>("--quiet") { Description = "only what to do" };
        var verb = new Verb(
            "plan",
            "Plans a lake: amounts, pH path, gas, washes, yield.",
            "alumroot plan --dyestuff madder --dry 100g --water 3L --salt potash-alum --salt-amount 50g --alkali soda-ash --temp 60C --to-ph 6.5",
            "alumroot plan --dyestuff weld --dry 3.5oz --salt potash-alum --alkali home-baked@36.0%loss --all-down",
            "alumroot plan --salt aluminium-sulfate --salt-amount 20g --water 1L --alkali soda-crystals --alkali-amount 25g --json");
        foreach ((_, Option<string?> option) in options) verb.Add(option);
        verb.Add(allDown);
        verb.Add(from);
        verb.Add(json);
        verb.Add(csv);
        verb.Add(quiet);
        verb.SetAction(parsed =>
        {
            if (!FieldFile.TryRead(parsed.GetValue(from), channels, out Dictionary<string, string> file)) return ExitCode.InputWrong;
            PlanRequest request = PlanRequest.From(name => name == PlanFields.AllDown && parsed.GetValue(allDown)
                ? "yes"
                : options.FirstOrDefault(o => o.Field == name).Option is { } o && parsed.GetValue(o) is { } typed ? typed : file.GetValueOrDefault(name));
            return Write(PlanMaker.Answer(request), parsed.GetValue(json), parsed.GetValue(csv), parsed.GetValue(quiet), channels);
        });
        return verb;
    }

    private static int Write(PlanAnswer answer, bool json, bool csv, bool quiet, Channels channels)
    {
        if (answer.Refusal is { } refusal)
        {
            if (json) channels.Data.WriteLine(Json.Text(PlanJson.Refused(refusal)));
            return channels.End(ExitCode.CannotBeMet, NotPlannedWords.Refused(refusal));
        }
        if (answer.Troubles.Count > 0)
        {
            foreach (Parts.FieldTrouble trouble in answer.Troubles) channels.Messages.WriteLine(trouble.Sentence);
            return ExitCode.InputWrong;
        }
        if (answer.Plan is null)
        {
            if (json) channels.Data.WriteLine(Json.Text(PlanJson.NotPlanned(answer)));
            return channels.End(ExitCode.CannotBeMet, NotPlannedWords.NotPlanned(answer));
        }
        if (json) channels.Data.WriteLine(Json.Text(PlanJson.Of(answer)));
        else if (csv && !answer.AmountsWithheld) channels.Data.Write(PlanTable.Of(answer.Plan));
        else if (!csv) channels.Data.Write(PlanText.Of(answer, quiet));
        foreach (PlanCaution caution in answer.Cautions.Where(c => c.Level != Parts.CautionWord.Mind || (c.IsDanger && (quiet || json || csv)))) channels.Messages.WriteLine(NotPlannedWords.Spoken(caution));
        return answer.AmountsWithheld ? ExitCode.CannotBeMet : ExitCode.Done;
    }
}
