namespace Alumroot.Studio.Integrity;

/// <summary>How bad a finding is.</summary>
public enum FindingLevel
{
    /// <summary>Worth knowing; nothing is wrong with the record.</summary>
    Note,

    /// <summary>Something does not agree, and a person should look. Nothing is lost.</summary>
    Look,

    /// <summary>Something that was kept is damaged or gone.</summary>
    Loss,
}

/// <summary>Something that the check found.</summary>
/// <param name="Key">Which finding: one of <see cref="FindingKeys"/>.</param>
/// <param name="Level">How bad it is.</param>
/// <param name="Where">The entry, photograph, batch or lot.</param>
/// <param name="Detail">What was found there; may be empty.</param>
public sealed record StudioFinding(string Key, FindingLevel Level, string Where, string Detail = "");

/// <summary>The keys of all findings.</summary>
public static class FindingKeys
{
    /// <summary>The database says that its own pages do not agree.</summary>
    public const string DatabaseDamaged = "database-damaged";

    /// <summary>The columns of an entry cannot be read.</summary>
    public const string EntryUnreadable = "entry-unreadable";

    /// <summary>An entry is not what its checksum was made of.</summary>
    public const string EntryChanged = "entry-changed";

    /// <summary>Entries were taken out, put between or changed.</summary>
    public const string ChainBroken = "chain-broken";

    /// <summary>A document of a known name does not follow its form.</summary>
    public const string DocumentUnreadable = "document-unreadable";

    /// <summary>A document that this version does not know.</summary>
    public const string DocumentUnknown = "document-unknown";

    /// <summary>An entry corrects one that is not there.</summary>
    public const string CorrectionLost = "correction-lost";

    /// <summary>A photograph is missing.</summary>
    public const string PhotoMissing = "photo-missing";

    /// <summary>A photograph is not what its name was made of.</summary>
    public const string PhotoChanged = "photo-changed";

    /// <summary>A photograph that no entry names.</summary>
    public const string PhotoUnnamed = "photo-unnamed";

    /// <summary>The line of a list is not what the entries give.</summary>
    public const string ListDiffers = "list-differs";

    /// <summary>The search index does not hold every entry.</summary>
    public const string SearchDiffers = "search-differs";

    /// <summary>Two plans stand under one number.</summary>
    public const string TwoPlans = "two-plans";

    /// <summary>More was used of a lot than came.</summary>
    public const string StockBelowNothing = "stock-below-nothing";

    /// <summary>Entries of an import are kept aside.</summary>
    public const string KeptAside = "kept-aside";

    /// <summary>All keys.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        DatabaseDamaged, EntryUnreadable, EntryChanged, ChainBroken, DocumentUnreadable, DocumentUnknown, CorrectionLost, PhotoMissing, PhotoChanged, PhotoUnnamed,
        ListDiffers, SearchDiffers, TwoPlans, StockBelowNothing, KeptAside,
    ];
}
