using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Trials.Design;

namespace Alumroot.App.Trials;

/// <summary>The amounts of one jar, by the plan engine.</summary>
/// <param name="SaltGrams">Salt.</param>
/// <param name="Alkali">Alkali with its span, in its own unit.</param>
/// <param name="AlkaliUnit">Gram or millilitre.</param>
/// <param name="VesselLitres">The least vessel.</param>
/// <param name="Remarks">What has to be minded in a jar as small as this.</param>
/// <param name="WhyNot">Why there are no amounts; null when there are.</param>
public sealed record JarPlan(double SaltGrams, Estimate Alkali, SubstanceUnit AlkaliUnit, double VesselLitres, IReadOnlyList<string> Remarks, string? WhyNot)
{
    // A jar on a table: less cannot be weighed, more is a batch (the trade's small trials lie between 20 and 250 mL; common practice, no source).
    private const double LeastMillilitres = 20, MostMillilitres = 250;

    // Under so many steps of the scale a weighed amount is off by a tenth and more.
    private const int StepsForATenth = 5;

    /// <summary>Reckons a jar: the shared plan with this jar's settings in the fields of their names.</summary>
    public static JarPlan Of(PlanRequest shared, IReadOnlyList<Factor> factors, Jar jar)
    {
        ArgumentNullException.ThrowIfNull(shared);
        ArgumentNullException.ThrowIfNull(factors);
        ArgumentNullException.ThrowIfNull(jar);
        PlanRequest request = shared;
        for (int f = 0; f < factors.Count; f++)
            if (PlanFields.All.Contains(factors[f].Name)) request = request.With(factors[f].Name, Typed(factors[f], jar.Levels[f]));
        PlanAnswer answer = PlanMaker.Answer(request);
        if (answer.Plan is not { } plan || Bench.BatchBeginning.WhyNot(answer) is not null)
            return new JarPlan(0, default, SubstanceUnit.Gram, 0, [], Bench.BatchBeginning.WhyNot(answer) ?? "These settings cannot be planned.");
        double step = plan.Input.ScaleStep.Grams, salt = plan.Salts.Sum(s => s.Grams), water = plan.Input.Water.Millilitres;
        var remarks = new List<string>();
        if (water < LeastMillilitres) remarks.Add($"{water:0} mL is less than can be filtered and weighed; take {LeastMillilitres:0} mL or more");
        if (water > MostMillilitres) remarks.Add($"{water:0} mL is a batch, not a jar; {MostMillilitres:0} mL is the most for a row");
        if (salt < StepsForATenth * step) remarks.Add("weigh the salt for all jars at once, dissolve it, and share the solution out");
        if (plan.Input.Alkali.Unit == SubstanceUnit.Gram && plan.Alkali.Value < StepsForATenth * step) remarks.Add("weigh the alkali for all jars at once, dissolve it, and share the solution out");
        return new JarPlan(salt, plan.Alkali, plan.Input.Alkali.Unit, plan.LeastVesselLitres, remarks, null);
    }

    private static string Typed(Factor factor, int level) => factor is Factor.Measured { Unit.Length: > 0 } m ? $"{m.Setting(level)} {m.Unit}" : factor.Setting(level);
}
