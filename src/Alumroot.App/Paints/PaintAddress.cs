using Alumroot.App.Requests;
using Alumroot.Studio;
using Microsoft.AspNetCore.WebUtilities;

namespace Alumroot.App.Paints;

/// <summary>From the address of a recipe back to the question.</summary>
public static class PaintAddress
{
    /// <summary>Reads an address; null when it is not one of a recipe.</summary>
    /// <param name="address">The address, as <see cref="PaintRequest.Address"/> gives it.</param>
    /// <param name="store">The record, for the lake that it names.</param>
    public static PaintRequest? Read(string address, StudioStore store)
    {
        ArgumentNullException.ThrowIfNull(address);
        if (!address.StartsWith(PaintRequest.Path + "?", StringComparison.Ordinal)) return null;
        var fields = QueryHelpers.ParseQuery(address[PaintRequest.Path.Length..]);
        string? Typed(string name) => fields.TryGetValue(name, out var value) ? value.ToString() : null;
        return new PaintRequest(Typed, PaintFields.Label, PaintLake.Of(store, Typed(PaintRequest.Lake)), PaintOwn.Of(store));
    }
}
