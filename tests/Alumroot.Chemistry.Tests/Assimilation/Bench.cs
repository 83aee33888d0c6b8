using Alumroot.Chemistry.Assimilation;
using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.Tests.Assimilation;

/// <summary>Short ways to the bench's state.</summary>
internal static class Bench
{
    internal static BenchState State(LakePlanInput input, params IReadOnlyList<BenchEvent> events) =>
        Assert.IsType<AssimilationOutcome.Assimilated>(Assimilator.Assimilate(input, events)).State;
}
