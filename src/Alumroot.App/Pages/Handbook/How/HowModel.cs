namespace Alumroot.App.Pages.Handbook.How;

/// <summary>A model of the program that has a page of its own.</summary>
/// <param name="Key">Its word in the address.</param>
/// <param name="Name">Its name.</param>
/// <param name="About">What it reckons.</param>
/// <param name="Page">The component with its text.</param>
public sealed record HowModel(string Key, string Name, string About, Type Page)
{
    /// <summary>All models, in the order of the work.</summary>
    public static IReadOnlyList<HowModel> All { get; } =
    [
        new("plan", "The plan", "amounts, aim, spans, portions", typeof(HowPlan)),
        new("equilibrium", "Equilibrium", "pH, what dissolves, what comes down", typeof(HowEquilibrium)),
        new("path", "Path of the pH", "the addition, two solids, the telling reading", typeof(HowPath)),
        new("gas", "Gas and vessel", "how much gas, how high it foams", typeof(HowGas)),
        new("washing", "Washing", "what each wash leaves, what the meter reads", typeof(HowWashing)),
        new("yield", "Pigment", "how much dry pigment to hope for", typeof(HowYield)),
    ];

    /// <summary>The model of this key, or null.</summary>
    public static HowModel? Find(string key) => All.FirstOrDefault(m => m.Key == key);
}
