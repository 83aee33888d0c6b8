using Alumroot.App.Charts;

namespace Alumroot.App.Bench;

/// <summary>The pH readings of a batch where they stand on the path of the addition.</summary>
internal static class PathReadings
{
    private const double LeastApart = 0.08;

    public static IReadOnlyList<ChartMarker> Of(LakeInWork lake)
    {
        Addition addition = lake.Addition!;
        var markers = new List<ChartMarker>();
        double labelled = double.NegativeInfinity;
        foreach (PhOnPath reading in addition.Readings.Where(r => r.Units <= addition.AxisEnd))
        {
            // Words that would lie on one another are left out; the table below has every reading.
            bool room = reading.Units - labelled > LeastApart * addition.AxisEnd;
            if (room) labelled = reading.Units;
            markers.Add(new ChartMarker(reading.Units, reading.Ph, room ? reading.Typed : "", reading.ResolutionPh / 2));
        }
        return markers;
    }
}
