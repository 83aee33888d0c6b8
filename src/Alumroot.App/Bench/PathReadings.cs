using Alumroot.App.Charts;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Bench;

/// <summary>The pH readings of a batch where they stand on the path of the addition.</summary>
internal static class PathReadings
{
    public static IReadOnlyList<ChartMarker> Of(LakeInWork lake, LakePlan plan)
    {
        Addition addition = Addition.Of(lake, plan);
        double most = plan.Curve.Count > 0 ? addition.AxisEnd(plan) : 0;
        return [.. addition.Readings.Where(r => r.Units <= most).Select(r => new ChartMarker(r.Units, r.Ph, r.Typed, r.ResolutionPh / 2))];
    }
}
