namespace Alumroot.App.Words;

/// <summary>One source of facts.</summary>
/// <param name="Key">Its key in the tables.</param>
/// <param name="Author">Who wrote it; empty when nobody is named.</param>
/// <param name="Title">Its title.</param>
/// <param name="In">Journal or publisher; empty when there is none.</param>
/// <param name="Year">The year; empty when none is known.</param>
/// <param name="Note">How it was read.</param>
public sealed record Source(string Key, string Author, string Title, string In, string Year, string Note)
{
    /// <summary>Author, title, place, year, in one line.</summary>
    public string Spelt => string.Join(", ", new[] { Author, Title, In, Year }.Where(part => part.Length > 0));
}
