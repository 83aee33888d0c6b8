namespace Alumroot.App.Parts;

/// <summary>The three layers of every page, in their order.</summary>
public enum LayerName
{
    /// <summary>The one thing to do or decide now.</summary>
    Do,

    /// <summary>What is reckoned, each figure with its span.</summary>
    Expect,

    /// <summary>What is recorded, newest first.</summary>
    Kept,
}
