using System.Globalization;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Requests;

/// <summary>What goes into a lake costs, by the prices of the lots chosen for it.</summary>
/// <param name="Money">The sum, in the money of the lots.</param>
/// <param name="Parts">What was counted: "madder 1.20".</param>
/// <param name="Missing">What has no price.</param>
/// <param name="PerGram">Money for a gram of pigment, by the plan's span of it.</param>
public sealed record PlanCost(double Money, IReadOnlyList<string> Parts, IReadOnlyList<string> Missing, Estimate PerGram)
{
    /// <summary>In words.</summary>
    public string Said
    {
        get
        {
            string missing = Missing.Count == 0 ? "" : $" Without {string.Join(" and ", Missing)}, for which no price is kept.";
            return string.Create(CultureInfo.InvariantCulture, $"What goes in costs {Money:0.00} in the money of your lots ({string.Join(", ", Parts)}), {PerGram.Value:0.00} for a gram of pigment ({PerGram.Low:0.00} to {PerGram.High:0.00}).{missing}");
        }
    }

    /// <summary>The cost; null when no lot with a price is chosen.</summary>
    /// <param name="answer">The plan with its lots.</param>
    /// <param name="lots">Finds a lot.</param>
    public static PlanCost? Of(PlanAnswer answer, Func<SubjectKey, LotState?> lots)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(lots);
        if (answer.Plan is not { } plan || answer.AmountsWithheld) return null;
        double money = 0;
        var parts = new List<string>();
        var missing = new List<string>();
        Count(PlanFields.DyestuffLot, "the dyestuff", plan.Input.DryDyestuff is { } dry ? dry.Grams / 1000 : null, Measured.Kilogram);
        Count(PlanFields.SaltLot, plan.Salts[0].Substance.PlainName, plan.Salts[0].Grams / 1000, Measured.Kilogram);
        bool poured = plan.Input.Alkali.Unit == SubstanceUnit.Millilitre;
        Count(PlanFields.AlkaliLot, plan.Input.Alkali.PlainName, plan.Alkali.Value / (poured ? 1e6 : 1000), poured ? Measured.CubicMetre : Measured.Kilogram);
        return parts.Count == 0 ? null : new PlanCost(money, parts, missing, new Estimate(money / plan.YieldGrams.Value, money / plan.YieldGrams.High, money / plan.YieldGrams.Low));

        void Count(string field, string name, double? amountSi, string unit)
        {
            if (amountSi is not { } amount) return;
            double? cost = answer.Request[field] is { } typed && SubjectKey.TryRead(typed) is { } key && lots(key)?.Bought is { } bought && bought.Amount.SiUnit == unit && bought.Amount.SiValue > 0 && TypedMoney.Of(bought.Cost) is { } price
                ? price * amount / bought.Amount.SiValue
                : null;
            if (cost is not { } known)
            {
                missing.Add(name);
                return;
            }
            money += known;
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"{name} {known:0.00}"));
        }
    }
}
