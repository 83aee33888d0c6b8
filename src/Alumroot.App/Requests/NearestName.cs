using Alumroot.Catalogue.Finding;

namespace Alumroot.App.Requests;

/// <summary>Names of the handbook that are a few slips away from a typed one.</summary>
internal static class NearestName
{
    private const int Most = 3;

    /// <summary>At most three, nearest first.</summary>
    internal static IEnumerable<string> To(string typed, IEnumerable<string> names)
    {
        string wanted = Plain(typed);
        int slips = Math.Max(1, wanted.Length / 4);
        return names.Select(n => (Name: n, Slips: TypingDistance.Between(wanted, Plain(n), slips)))
            .Where(p => p.Slips <= slips)
            .OrderBy(p => p.Slips)
            .Select(p => p.Name)
            .DistinctBy(Plain)
            .Take(Most);
    }

    private static string Plain(string name) => name.ToLowerInvariant().Replace('-', ' ');
}
