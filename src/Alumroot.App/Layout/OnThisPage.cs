using Microsoft.AspNetCore.Components;

namespace Alumroot.App.Layout;

/// <summary>Addresses of places on the page that is open. The base address is the root, so a bare fragment would lead to the first page.</summary>
public static class OnThisPage
{
    /// <summary>The address of an element on this page.</summary>
    /// <param name="navigation">Where we are.</param>
    /// <param name="id">The element's id, without the number sign.</param>
    public static string AddressOf(this NavigationManager navigation, string id)
    {
        ArgumentNullException.ThrowIfNull(navigation);
        return "/" + navigation.ToBaseRelativePath(navigation.Uri).Split('#')[0] + "#" + id;
    }
}
