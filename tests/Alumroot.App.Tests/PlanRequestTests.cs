using Alumroot.App.Requests;
using CsCheck;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;

namespace Alumroot.App.Tests;

/// <summary>A plan is its address: what is typed comes back, whatever it is, and nothing typed can break the reading.</summary>
public sealed class PlanRequestTests
{
    private static readonly Gen<string> Piece = Gen.OneOf(new[]
    {
        "1,5", "1.5", "1½", "1 1/2", "1,500", "-3", "1e400", "0", "g", " oz", "L", " cups", "C", "°F", "dH", "alum", "soda", "madder", "potash-alum", "@98%", "@", "+10H2O", "+99999999999H2O", "ammonia",
        "home-baked-soda", "lead", "\u0000", "\u202E", "😀", "İ", "<b>", "\"", "&", "=", "%", "#", "+", " ", "\t", "NaN", "∞", "down", "amount", "kitchen", "pure", "alkali-first",
    }.Select(Gen.Const).ToArray());

    private static readonly Gen<string> Typed = Gen.OneOf(Piece.Array[0, 5].Select(string.Concat), Gen.String[0, 260]);

    private static readonly Gen<Dictionary<string, string>> Fields =
        Gen.Dictionary(Gen.OneOf(PlanFields.All.Select(Gen.Const).ToArray()), Typed)[0, 8];

    [Fact]
    public void What_is_typed_comes_back_from_the_address() => Fields.Sample(fields =>
    {
        PlanRequest request = PlanRequest.From(fields.GetValueOrDefault);
        Dictionary<string, StringValues> query = QueryHelpers.ParseQuery(request.Address.Split('?').ElementAtOrDefault(1));
        PlanRequest back = PlanRequest.From(name => query.TryGetValue(name, out StringValues typed) ? typed.ToString() : null);
        return PlanFields.All.All(field => request[field] == back[field]);
    }, iter: 500);

    [Fact]
    public void Changing_a_field_changes_that_field_alone() => Gen.Select(Fields, Gen.OneOf(PlanFields.All.Select(Gen.Const).ToArray())).Sample((fields, changed) =>
    {
        PlanRequest request = PlanRequest.From(fields.GetValueOrDefault), other = request.With(changed, "50 g");
        return other[changed] == "50 g" && PlanFields.All.Where(f => f != changed).All(f => request[f] == other[f]) && request.With(changed, null)[changed] is null;
    }, iter: 200);

    [Fact]
    public void Nothing_typed_can_break_the_reading() => Fields.Sample(fields =>
    {
        PlanAnswer answer = PlanMaker.Answer(PlanRequest.From(fields.GetValueOrDefault));
        Assert.True(answer.Input is not null || answer.Refusal is not null || answer.Troubles.Count > 0);
        Assert.All(answer.Troubles, trouble => Assert.NotEmpty(trouble.Sentence));
        _ = Pages.Lakes.PlanStatus.Of(Pages.Lakes.PlanView.Of(answer.Request, sent: true));
    }, iter: 400);

    [Fact]
    public void Blanks_are_not_typed_and_a_long_text_is_cut()
    {
        Assert.True(PlanRequest.From(_ => " \t ").IsEmpty);
        Assert.Equal("/lakes/plan", PlanRequest.Empty.Address);
        Assert.Equal(200, PlanRequest.From(_ => new string('1', 5000))[PlanFields.Dry]!.Length);
    }
}
