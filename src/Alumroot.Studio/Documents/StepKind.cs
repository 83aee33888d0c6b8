using Alumroot.Studio.Journal;

namespace Alumroot.Studio.Documents;

/// <summary>The steps of a batch, in the order of the work.</summary>
public enum StepKind
{
    /// <summary>The colour is drawn from the plant.</summary>
    Extract,

    /// <summary>The metal salt is added.</summary>
    Salt,

    /// <summary>The alkali is added.</summary>
    Alkali,

    /// <summary>The lake sinks.</summary>
    Settle,

    /// <summary>Salts are washed out.</summary>
    Wash,

    /// <summary>The wet cake is filtered.</summary>
    Filter,

    /// <summary>The cake dries.</summary>
    Dry,

    /// <summary>The dry pigment is ground.</summary>
    Grind,

    /// <summary>The powder is sieved.</summary>
    Sieve,
}

/// <summary>What kinds of things stand on the shelf.</summary>
public enum LotClass
{
    /// <summary>A plant or another source of colour.</summary>
    Dyestuff,

    /// <summary>A metal salt.</summary>
    Salt,

    /// <summary>An alkali.</summary>
    Alkali,

    /// <summary>A binder for paint.</summary>
    Binder,

    /// <summary>A paper, panel or other ground to paint on.</summary>
    Support,
}

/// <summary>What a lot is for in a batch.</summary>
/// <param name="Role">What kind of thing.</param>
/// <param name="Lot">The lot's key, such as <c>lot-7</c>.</param>
public sealed record LotChoice(LotClass Role, string Lot);

/// <summary>How a batch comes from another.</summary>
public enum BatchOrigin
{
    /// <summary>It stands alone.</summary>
    Own,

    /// <summary>The same plan again, perhaps in another size.</summary>
    Repeat,

    /// <summary>A part of the other's wet cake.</summary>
    Split,
}

/// <summary>A part of a lot was used.</summary>
/// <param name="Lot">The lot's key, such as <c>lot-7</c>.</param>
/// <param name="Amount">How much was taken.</param>
public sealed record LotUse(string Lot, Measured Amount)
{
    /// <summary>The lot's key; null when the text is none.</summary>
    internal SubjectKey? Key => SubjectKey.TryRead(Lot) is { Class: SubjectClass.Lot } key ? key : null;
}
