using Alumroot.App.Words;
using Alumroot.Chemistry.Planning;

namespace Alumroot.App.Requests;

/// <summary>The one way from a request to its answer, for the page, the command line and a bookmark alike. Pure.</summary>
public static class PlanMaker
{
    /// <summary>Reads, plans and collects the cautions.</summary>
    public static PlanAnswer Answer(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        PlanAnswer read = PlanReader.Read(request);
        if (read.Input is null) return read;
        PlanOutcome outcome = LakePlanner.Plan(read.Input);
        bool quarrels = outcome is PlanOutcome.Planned { Plan: var plan } && plan.Findings.Any(f => f.Key == "stated-ph-quarrels");
        PlanAnswer answer = read with { Outcome = outcome, MixUps = quarrels ? StatedPhCheck.WouldFit(read.Input) : [] };
        return answer with { Cautions = PlanCautions.For(answer) };
    }
}
