using Alumroot.App.Requests;
using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;
using Alumroot.Quantities;
using Alumroot.Quantities.Units;
using Alumroot.Quantities.Writing;

namespace Alumroot.App.Pages.Lakes;

/// <summary>What stands on the fold lines of the form: the values taken, and whether they were assumed. Nothing while the request is in trouble.</summary>
internal sealed class FoldLines(PlanView view)
{
    private readonly LakePlanInput? _input = view.Answer.Input;
    private readonly TextStyle _style = PlanNumbers.StyleOf(view.Answer.Request);

    internal string? Water => _input is null ? null : $"{Said(PlanFields.Water, Bare(QuantityText.Of(_input.Water, _style)))}, {Said(PlanFields.Hardness, Bare(QuantityText.Of(_input.Hardness, _style)))}";

    internal string? Salt => _input is null ? null : string.Join(" and ", _input.Salts.Select((s, i) => i == 0 ? Said(PlanFields.SaltAmount, Bare(QuantityText.Of(s.Amount, _style))) : $"{Bare(QuantityText.Of(s.Amount, _style))} {s.Substance.PlainName}"));

    internal string? Order => _input is null ? null : Said(PlanFields.Order, _input.Order == OrderOfAddition.SaltFirst ? "alkali last" : "salt last");

    internal string? Temperature => _input is null ? null : Said(PlanFields.Temperature, Bare(QuantityText.Of(_input.Temperature, _style)));

    internal string? Aim => _input?.Aim switch
    {
        PlanAim.ToPh to => Said(PlanFields.ToPh, $"pH {Bare(QuantityText.Of(to.Ph, _style))}"),
        PlanAim.AlkaliAmount => "a given amount",
        PlanAim.AllMetalDown => "all metal down",
        _ => null,
    };

    internal string? Vessel => _input is null ? null : $"{(_input.Vessel is { } v ? Bare(QuantityText.Of(v, _style)) : "no vessel named")}, {Said(PlanFields.Scale, Bare(QuantityText.Of(_input.ScaleStep, _style with { Units = UnitsShown.Metric })))}";

    internal string? Wash => _input is null ? null : $"{Said(PlanFields.WashTo, $"to {Bare(QuantityText.Of(_input.WashTo))}")}";

    internal string Units => UnitsValue.Length == 0 ? "grams, litres, °C" : "ounces, fluid ounces, °F";

    internal string UnitsValue => _style.Units == UnitsShown.Kitchen ? "kitchen" : "";

    private string Said(string field, string value) => view.Assumed(field) is null ? value : $"{value} assumed";

    private static string Bare(string text) => PlanNumbers.Bare(text);
}
