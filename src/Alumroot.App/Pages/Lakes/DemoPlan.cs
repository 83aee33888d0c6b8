using System.Text.Json;
using Alumroot.App.Requests;

namespace Alumroot.App.Pages.Lakes;

/// <summary>An invented plan of the demo studio.</summary>
/// <param name="Name">What the studio calls it.</param>
/// <param name="About">A few words on it.</param>
/// <param name="Request">What it asks for.</param>
public sealed record DemoPlan(string Name, string About, PlanRequest Request);

/// <summary>The plans of the demo studio, from <c>data/demo/plans.json</c> as it was when the program was built.</summary>
public static class DemoPlans
{
    private static readonly Lazy<IReadOnlyList<DemoPlan>> Read = new(Load);

    /// <summary>All of them, the plainest first.</summary>
    public static IReadOnlyList<DemoPlan> All => Read.Value;

    private static IReadOnlyList<DemoPlan> Load()
    {
        using Stream stream = typeof(DemoPlans).Assembly.GetManifestResourceStream("demo/plans.json")
            ?? throw new InvalidOperationException("demo/plans.json was not built into the program");
        using JsonDocument document = JsonDocument.Parse(stream);
        return [.. document.RootElement.EnumerateArray().Select(plan => new DemoPlan(
            plan.GetProperty("name").GetString() ?? "",
            plan.GetProperty("about").GetString() ?? "",
            PlanRequest.From(field => plan.GetProperty("fields").TryGetProperty(field, out JsonElement typed) ? typed.GetString() : null)))];
    }
}
