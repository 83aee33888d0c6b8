using System.Globalization;
using System.Text.RegularExpressions;
using Alumroot.Catalogue;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Reading;

namespace Alumroot.App.Requests;

/// <summary>Reads a salt or an alkali with what is written behind it: <c>potash-alum@98%</c>, <c>soda-ash+10H2O</c>, <c>home-baked-soda@36.0%loss</c>, <c>ammonia@10%</c>, <c>wood-ash-lye@0.8mol/L</c>.</summary>
internal static partial class SubstanceReader
{
    /// <summary>What came of it; exactly one of the first three is set.</summary>
    internal sealed record Answer(Substance? Substance, string? Trouble, Reagent? Refused, Reagent? Known, IReadOnlyList<string> Offers);

    internal static Answer Read(string fieldLabel, string typed, SubstanceRole role, FieldReader fields)
    {
        Match m = Written().Match(typed);
        string name = m.Groups["name"].Value.Trim();
        CatalogueData data = CatalogueData.Embedded;
        IReadOnlyList<Reagent> named = data.ReagentsNamed(name is "home-baked" ? "home-baked-soda" : name is "lye" ? "wood-ash-lye" : name);
        if (named.Count > 1)
        {
            Reagent[] fit = [.. named.Where(r => Fits(r, role))];
            if (fit.Length == 1) named = fit;
        }
        if (named.Count == 0)
        {
            string[] near = [.. NearestName.To(name, data.Reagents.Where(r => r.Stance != Stance.Refused && Fits(r, role)).SelectMany(r => (string[])[r.Key, r.Name, .. r.Aliases]))];
            return new Answer(null, $"{fieldLabel}: '{name}' is not known. {(near.Length > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "'alumroot lookup' and the handbook list what is.")}", null, null, near);
        }
        if (named.Count > 1)
            return new Answer(null, $"{fieldLabel}: '{name}' can mean {string.Join(" or ", named.Select(r => $"{r.Name} ({r.Key})"))}. Which does the packet say?", null, null, [.. named.Select(r => r.Key)]);
        Reagent reagent = named[0];
        if (reagent.Stance == Stance.Refused) return new Answer(null, null, reagent, null, []);
        if (!Fits(reagent, role)) return new Answer(null, $"{fieldLabel}: {reagent.Name} is not {(role == SubstanceRole.Salt ? "a metal salt" : "an alkali")}. Choose one of the list.", null, reagent, []);
        return Measure(fieldLabel, reagent, m, role, fields);
    }

    private static Answer Measure(string label, Reagent reagent, Match m, SubstanceRole role, FieldReader fields)
    {
        string mark = m.Groups["mark"].Value;
        switch (reagent.Key)
        {
            case "home-baked-soda":
                return Baked(label, reagent, mark, fields);
            case "ammonia":
                {
                    string strength = mark.Length > 0 ? mark : fields.Text(PlanFields.AlkaliStrength) ?? "10%";
                    if (QuantityReader.ReadFraction(strength, new FieldRule<Fraction>(Fraction.FromPercent(0.5), Fraction.FromPercent(1), Fraction.FromPercent(35), Fraction.FromPercent(35))) is Parsed<Fraction>.Understood f)
                        return f.Value.Percent >= 25 && CatalogueData.Embedded.FindReagent("strong-ammonia") is { Stance: Stance.Refused } strong
                            ? new Answer(null, null, strong, null, [])
                            : new Answer(SubstanceShelf.Ammonia(f.Value), null, null, reagent, []);
                    return Wrong($"{label}: '{strength}' could not be read as the strength of ammonia. Write it like ammonia@10%.");
                }
            case "wood-ash-lye":
                {
                    string? strength = mark.Length > 0 ? mark : fields.Text(PlanFields.AlkaliStrength);
                    if (strength is null) return Wrong($"{label}: how strong is the lye? Titrate 10 mL with vinegar and write it like wood-ash-lye@0.8mol/L.");
                    return QuantityReader.ReadAlkalinity(strength, FieldRules.LyeAlkalinity) is Parsed<AlkalinityOfLye>.Understood a
                        ? new Answer(SubstanceShelf.Lye(a.Value), null, null, reagent, [])
                        : Wrong($"{label}: '{strength}' could not be read as the strength of a lye. Write it like 0.8 mol/L.");
                }
        }
        if (SubstanceShelf.Find(reagent.Key) is not { } substance || substance.Role != role)
            return Wrong($"{label}: the plan cannot reckon with {reagent.Name} yet, since no constants for it are at hand. The handbook says what it is used for.");
        if (m.Groups["water"].Success)
        {
            double waters = double.Parse(m.Groups["water"].Value, CultureInfo.InvariantCulture);
            if (waters > 24) return Wrong($"{label}: {waters} waters to a formula is more than any salt here holds. Write it like +10H2O.");
            substance = SubstanceShelf.WithHydrate(substance, waters);
        }
        if (mark.Length > 0)
        {
            if (QuantityReader.ReadFraction(mark, FieldRules.Purity) is not Parsed<Fraction>.Understood purity)
                return Wrong($"{label}: '{mark}' could not be read as a purity. Write it like {reagent.Key}@98%.");
            substance = SubstanceShelf.WithPurity(substance, purity.Value);
        }
        return new Answer(substance, null, null, reagent, []);

        Answer Wrong(string sentence) => new(null, sentence, null, reagent, []);
    }

    private static Answer Baked(string label, Reagent reagent, string mark, FieldReader fields)
    {
        if (mark.Length > 0)
        {
            string text = mark.Replace("loss", "", StringComparison.OrdinalIgnoreCase).Trim();
            return QuantityReader.ReadFraction(text, FieldRules.MassLoss) is Parsed<Fraction>.Understood f && f.Value.Ratio < 0.6
                ? new Answer(SubstanceShelf.HomeBakedSoda(f.Value), null, null, reagent, [])
                : new Answer(null, $"{label}: '{mark}' could not be read as the loss in baking. Write it like home-baked-soda@36.0%loss.", null, reagent, []);
        }
        Mass? before = fields.Optional(PlanFields.BakedBefore, t => QuantityReader.ReadMass(t, FieldRules.ReagentMass));
        Mass? after = fields.Optional(PlanFields.BakedAfter, t => QuantityReader.ReadMass(t, FieldRules.ReagentMass));
        if (before is null || after is null)
        {
            if (fields.HasTrouble(PlanFields.BakedBefore) || fields.HasTrouble(PlanFields.BakedAfter)) return new Answer(null, null, null, reagent, []);
            return new Answer(null, $"{label}: weigh the powder before and after baking and give both, or the loss, like home-baked-soda@36.0%loss.", null, reagent, []);
        }
        if (after.Value >= before.Value) return new Answer(null, $"{label}: the powder weighs {after.Value.Grams:0.#} g after baking and {before.Value.Grams:0.#} g before. Baking takes mass away; look whether the two were swapped.", null, reagent, []);
        double loss = 1 - after.Value / before.Value;
        return loss > 0.55
            ? new Answer(null, string.Create(CultureInfo.InvariantCulture, $"{label}: {100 * loss:0} % lost is far more than baking soda can lose (36.9 %). Look at the two weights and the tare of the tray."), null, reagent, [])
            : new Answer(SubstanceShelf.HomeBakedSoda(Fraction.FromRatio(loss)), null, null, reagent, []);
    }

    private static bool Fits(Reagent r, SubstanceRole role) => r.Stance == Stance.Refused || r.Role == (role == SubstanceRole.Salt ? ReagentRole.Salt : ReagentRole.Alkali);

    [GeneratedRegex(@"^(?<name>[^@+]*)(?:\+(?<water>\d+(?:\.\d+)?)\s*H2O)?(?:@(?<mark>.*))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Written();
}
