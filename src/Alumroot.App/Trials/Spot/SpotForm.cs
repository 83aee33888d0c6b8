using System.Globalization;
using Alumroot.App.Colours;
using Alumroot.Colour.Colorimetry;
using Alumroot.Colour.Photograph;
using Alumroot.Studio.Documents;
using Alumroot.Trials.Spot;

namespace Alumroot.App.Trials.Spot;

/// <summary>A row of drops as a form tells it: by eye, or by the areas of a photograph.</summary>
/// <param name="Document">What to keep; null when it is not enough.</param>
/// <param name="AreasMissing">Whether areas were chosen of which some are missing.</param>
internal sealed record SpotForm(SpotTested? Document, bool AreasMissing)
{
    /// <summary>Names of the fields; the last three are followed by the key of a salt.</summary>
    internal const string Lot = "lot", Tile = "tile", Seen = "seen-", Solid = "solid-", Drop = "drop-";

    /// <summary>Reads the form.</summary>
    /// <param name="typed">Text by field name.</param>
    /// <param name="view">The photograph; null when there is none.</param>
    /// <param name="hash">Its hash.</param>
    internal static SpotForm Read(Func<string, string?> typed, PhotoView? view, string? hash)
    {
        double[]? tile = Absorbed(typed(Tile)), liquor = Absorbed(typed(Drop + SpotDrop.SodaAlone));
        bool missing = false;
        var drops = new List<SpotDrop>();
        foreach (string salt in SpotSalt.All.Select(s => s.Salt).Prepend(SpotDrop.SodaAlone))
        {
            if (salt != SpotDrop.SodaAlone && (typed(Drop + salt) ?? typed(Solid + salt)) is not null)
            {
                if (tile is null || liquor is null || Absorbed(typed(Drop + salt)) is not { } drop) missing = true;
                else
                {
                    double[]? solid = Absorbed(typed(Solid + salt));
                    double[] own = Less(liquor, tile), left = Less(drop, tile);
                    drops.Add(new SpotDrop(salt, (SpotSeen)SpotColour.Of(solid is null ? null : Less(solid, tile), left, own))
                    {
                        LeftShare = Math.Round(SpotColour.LeftShare(left, own), 3),
                        Solid = ColourOf(typed(Solid + salt)) is { } lab ? new LabText(Math.Round(lab.L, 2), Math.Round(lab.A, 2), Math.Round(lab.B, 2)) : null,
                    });
                }
            }
            else if (Enum.TryParse(typed(Seen + salt), ignoreCase: true, out SpotSeen seen) && Enum.IsDefined(seen)) drops.Add(new SpotDrop(salt, seen));
        }
        if (missing || drops.All(d => d.Salt == SpotDrop.SodaAlone)) return new SpotForm(null, missing);
        return new SpotForm(new SpotTested(drops) { Photos = hash is not null && view is not null ? [hash] : [] }, false);

        Lab? ColourOf(string? area) => int.TryParse(area, NumberStyles.None, CultureInfo.InvariantCulture, out _) ? view?.Answer.Colours.FirstOrDefault(c => c.Id == area)?.Colour : null;

        double[]? Absorbed(string? area) => ColourOf(area) is { } lab ? BandAbsorbance.Of(lab) : null;

        static double[] Less(double[] a, double[] b) => [.. a.Zip(b, (x, y) => x - y)];
    }
}
