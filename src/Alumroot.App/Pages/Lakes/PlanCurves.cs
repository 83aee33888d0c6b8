using Alumroot.App.Charts;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Pages.Lakes;

/// <summary>The lines of a plan's charts.</summary>
public sealed class PlanCurves
{
    private readonly LakePlan _plan;

    /// <summary>Of a plan.</summary>
    public PlanCurves(LakePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        AlkaliLast = plan.Input.Order == OrderOfAddition.SaltFirst;
        double salt = plan.Salts.Sum(s => s.Grams);
        X = [.. plan.Curve.Select(p => AlkaliLast ? p.Alkali : p.SaltShare * salt)];
        string unit = AlkaliLast && plan.Input.Alkali.Unit == SubstanceUnit.Millilitre ? "mL" : "g";
        Last = AlkaliLast ? plan.Input.Alkali.PlainName : plan.Salts[0].Substance.PlainName;
        XName = $"{Last}, {unit}";
        End = AlkaliLast ? plan.Alkali.Value : salt;
    }

    /// <summary>Whether the alkali goes in last.</summary>
    public bool AlkaliLast { get; }

    /// <summary>What goes in last.</summary>
    public string Last { get; }

    /// <summary>Name and unit of the horizontal axis.</summary>
    public string XName { get; }

    /// <summary>How much is in: grams or millilitres.</summary>
    public IReadOnlyList<double> X { get; }

    /// <summary>Where the plan ends.</summary>
    public double End { get; }

    private bool TwoSolids => _plan.Curve.Any(p => p.PhIfBasicSalt is not null);

    /// <summary>The middle line.</summary>
    public ChartSeries Middle => TwoSolids ? new("hydroxide", X, Each(p => p.PhIfHydroxide)) : new("middle", X, Each(p => p.Ph.Value));

    /// <summary>The middle line of the other solid; null where it makes no difference.</summary>
    public ChartSeries? Second => TwoSolids ? new("basic salt", X, Each(p => p.PhIfBasicSalt ?? p.PhIfHydroxide)) : null;

    /// <summary>Nine paths in ten.</summary>
    public ChartBand Band90 => new(X, Each(p => p.Ph.Low), Each(p => p.Ph.High));

    /// <summary>Five paths in ten.</summary>
    public ChartBand Band50 => new(X, Each(p => p.PhQuarter), Each(p => p.PhThreeQuarters));

    /// <summary>Single possible paths.</summary>
    public IReadOnlyList<ChartSeries> Samples => [.. _plan.SamplePaths.Select(path => new ChartSeries("", X, path))];

    /// <summary>The place of the reading that tells which solid comes down.</summary>
    public IReadOnlyList<ChartMarker> Markers => _plan.Telling is { } t && AlkaliLast
        ? [new ChartMarker(t.AtAlkali, (t.PhIfHydroxide.Value + t.PhIfBasicSalt.Value) / 2, "read here", Math.Abs(t.PhIfHydroxide.Value - t.PhIfBasicSalt.Value) / 2)]
        : [];

    /// <summary>Gas that has left, litres.</summary>
    public ChartSeries Gas => new("gas", X, Each(p => p.GasLitres.Value));

    /// <summary>Its span.</summary>
    public ChartBand Gas90 => new(X, Each(p => p.GasLitres.Low), Each(p => p.GasLitres.High));

    /// <summary>What has come down and the metal still dissolved, grams.</summary>
    public IReadOnlyList<ChartSeries> Solids =>
    [
        new("solid", X, Each(p => p.SolidGrams.Value)),
        new("metal dissolved", X, Each(p => p.DissolvedMetalMilligramsPerLitre.Value / 1000 * _plan.LiquidLitres)),
    ];

    /// <summary>Span of the solid.</summary>
    public ChartBand Solid90 => new(X, Each(p => p.SolidGrams.Low), Each(p => p.SolidGrams.High));

    /// <summary>The middle pH when this share of it is in.</summary>
    /// <param name="share">Of the planned amount, 0 to 1.</param>
    public double PhAt(double share) => Reading.At(X, Each(p => p.Ph.Value), share * End);

    private double[] Each(Func<PlanPoint, double> value) => [.. _plan.Curve.Select(value)];
}
