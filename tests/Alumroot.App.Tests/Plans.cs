using Alumroot.App.Requests;

namespace Alumroot.App.Tests;

/// <summary>Requests that several tests use.</summary>
internal static class Plans
{
    /// <summary>100 g of madder root, 50 g of potash alum, soda ash to pH 6.5.</summary>
    public static PlanRequest MadderRequest { get; } = Of(
        (PlanFields.Dyestuff, "madder"), (PlanFields.Dry, "100 g"), (PlanFields.Water, "3 L"), (PlanFields.Salt, "potash-alum"), (PlanFields.SaltAmount, "50 g"),
        (PlanFields.Alkali, "soda-ash"), (PlanFields.Temperature, "60 C"), (PlanFields.ToPh, "6.5"));

    /// <summary>Its answer.</summary>
    public static PlanAnswer Madder { get; } = PlanMaker.Answer(MadderRequest);

    /// <summary>A request from names and texts.</summary>
    public static PlanRequest Of(params (string Field, string Typed)[] fields) =>
        PlanRequest.From(name => fields.FirstOrDefault(f => f.Field == name).Typed);
}
