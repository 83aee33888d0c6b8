using Alumroot.App.Charts;

namespace Alumroot.App.Bench;

/// <summary>The pH readings of a batch where they stand on the path of the addition.</summary>
internal static class PathReadings
{
    public static IReadOnlyList<ChartMarker> Of(LakeInWork lake)
    {
        Addition addition = lake.Addition!;
        return [.. addition.Readings.Where(r => r.Units <= addition.AxisEnd).Select(r => new ChartMarker(r.Units, r.Ph, r.Typed, r.ResolutionPh / 2))];
    }
}
