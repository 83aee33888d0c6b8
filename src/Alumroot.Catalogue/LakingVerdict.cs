namespace Alumroot.Catalogue;

/// <summary>How firmly one metal takes a dye down, and the hue it gives.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Strength">How firmly it takes the dye down.</param>
/// <param name="Hue">The hue of the lake in plain words; empty where it is not known.</param>
public sealed record LakingVerdict(LakeMetal Metal, LakingStrength Strength, string Hue);
