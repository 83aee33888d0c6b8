namespace Alumroot.Catalogue.Finding;

/// <summary>One thing found.</summary>
/// <param name="Kind">Which part of the catalogue.</param>
/// <param name="Key">Its key there.</param>
/// <param name="Title">Its name or first words.</param>
/// <param name="Score">How well it fits, 0 to 1000; only the order has meaning.</param>
public sealed record Hit(FoundKind Kind, string Key, string Title, double Score);
