namespace Alumroot.Catalogue;

/// <summary>The plain answer to "will this dye take at all?" on one metal. Words are made from it elsewhere.</summary>
/// <param name="Answer">Which answer it is.</param>
/// <param name="DyestuffKey">The dyestuff asked about.</param>
/// <param name="Metal">The metal asked about.</param>
/// <param name="Strength">How firmly that metal takes it down.</param>
/// <param name="BetterMetal">A metal that takes it down more firmly, where one is known; null otherwise.</param>
/// <param name="Reason">Why, in the catalogue's words.</param>
/// <param name="Confidence">How far the verdict may be trusted.</param>
public sealed record LakingFinding(
    LakingAnswer Answer,
    string DyestuffKey,
    LakeMetal Metal,
    LakingStrength Strength,
    LakeMetal? BetterMetal,
    string Reason,
    Confidence Confidence);
