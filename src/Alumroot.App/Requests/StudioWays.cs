using Alumroot.Studio.Documents;

namespace Alumroot.App.Requests;

/// <summary>How the studio likes to work, put into a plan where nothing else was asked.</summary>
public static class StudioWays
{
    /// <summary>The request with the studio's own scale, strips, vessel, water and units where it says nothing of them.</summary>
    public static PlanRequest In(PlanRequest request, StudioSet ways)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(ways);
        PlanRequest filled = request;
        foreach ((string field, string typed) in ways.PlanFields)
            if (request[field] is null && PlanFields.All.Contains(field)) filled = filled.With(field, typed);
        return ways.Units is { } units && request[PlanFields.Units] is null && units != "metric" ? filled.With(PlanFields.Units, units) : filled;
    }
}
