using Alumroot.App.Recording;
using Alumroot.Studio.Documents;

namespace Alumroot.App.Tests;

/// <summary>What is typed of a lot becomes a lot, or a sentence under its field.</summary>
public sealed class ShelfFormTests
{
    [Fact]
    public void A_lot_is_read_whole()
    {
        ShelfForm form = Read((ShelfForm.Kind, "alkali"), (ShelfForm.Title, "soda baked at home"), (ShelfForm.Amount, "131 g"), (ShelfForm.BakedBefore, "212 g"), (ShelfForm.BakedAfter, "133,6 g"), (ShelfForm.Came, "14 Nov 2026"), (ShelfForm.Cost, "1.20"));
        Assert.Empty(form.Troubles);
        LotBought lot = form.Document!;
        Assert.Equal((LotClass.Alkali, "soda-ash", new DateOnly(2026, 11, 14), "1.20"), (lot.Substance, lot.PlanName, lot.CameOn, lot.Cost));
        Assert.Equal((0.131, 0.212, 0.1336), (lot.Amount.SiValue, lot.BakedFrom!.SiValue, lot.BakedTo!.SiValue));
    }

    [Theory]
    [InlineData(ShelfForm.Kind, "powder", "What it is: choose one of the list.")]
    [InlineData(ShelfForm.Title, " ", "Name: nothing is typed.")]
    [InlineData(ShelfForm.Amount, "", "How much came: nothing is typed.")]
    [InlineData(ShelfForm.Amount, "0 g", "How much came: it must be more than nothing.")]
    [InlineData(ShelfForm.Amount, "5o g", "How much came: 'o g' is not a unit that is known here. Did you mean 50 g?")]
    [InlineData(ShelfForm.BakedAfter, "130 g", "Home-baked soda: both weights are needed, or neither.", ShelfForm.BakedBefore)]
    [InlineData(ShelfForm.Came, "yesterday", "Day: 'yesterday' could not be read.")]
    [InlineData(ShelfForm.PlanName, "salt of the earth", "'salt of the earth' is not known.")]
    public void What_is_wrong_is_said_under_its_field(string field, string typed, string sentence, string? where = null)
    {
        ShelfForm form = Read((ShelfForm.Kind, "alkali"), (ShelfForm.Title, "soda"), (ShelfForm.Amount, "500 g"), (field, typed));
        Assert.Null(form.Document);
        Assert.Contains(sentence, form.Troubles[where ?? field], StringComparison.Ordinal);
    }

    [Fact]
    public void Baking_cannot_add_weight() =>
        Assert.Contains("must weigh less than before", Read((ShelfForm.Kind, "alkali"), (ShelfForm.Title, "soda"), (ShelfForm.Amount, "500 g"), (ShelfForm.BakedBefore, "100 g"), (ShelfForm.BakedAfter, "120 g")).Troubles[ShelfForm.BakedAfter], StringComparison.Ordinal);

    private static ShelfForm Read(params (string Field, string Typed)[] typed) => ShelfForm.Read(name => typed.LastOrDefault(t => t.Field == name).Typed);
}
