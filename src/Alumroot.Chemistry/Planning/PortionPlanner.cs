using Alumroot.Quantities;

namespace Alumroot.Chemistry.Planning;

/// <summary>Splits what is added last into portions: large ones first, small ones where the pH turns, none that froths over the room in the vessel.</summary>
internal static class PortionPlanner
{
    /// <summary>Part of the whole that goes in as large portions.</summary>
    internal const double LargeShare = 0.75;

    /// <summary>Least number of large portions.</summary>
    internal const int LeastLarge = 4;
    private const int Small = 4, Most = 24;

    /// <summary>Plans portions.</summary>
    /// <param name="bundle">Paths of the addition.</param>
    /// <param name="end">End of the addition on the paths' axis.</param>
    /// <param name="units">Grams or millilitres that the end stands for.</param>
    /// <param name="input">The plan's input.</param>
    /// <param name="allGasLitres">All gas of the addition.</param>
    /// <param name="liquidLitres">Liquid in the vessel.</param>
    internal static IReadOnlyList<Portion> Plan(PathBundle bundle, double end, double units, LakePlanInput input, double allGasLitres, double liquidLitres)
    {
        double room = GasRoomLitres(input, liquidLitres);
        int large = Math.Clamp((int)Math.Ceiling(LargeShare * allGasLitres / room), LeastLarge, Most - Small);
        var list = new List<Portion>();
        double before = 0;
        for (int i = 1; i <= large + Small; i++)
        {
            double share = i <= large ? LargeShare * i / large : LargeShare + (1 - LargeShare) * (i - large) / Small;
            Estimate ph = bundle.At(p => p.Ph, share * end);
            list.Add(new Portion(i, (share - before) * units, share * units, ph, (share - before) * allGasLitres));
            before = share;
        }
        return list;
    }

    /// <summary>Gas that a portion may set free: as much as there is room above the liquid; without a vessel, as much as half the liquid (common practice, no source).</summary>
    internal static double GasRoomLitres(LakePlanInput input, double liquidLitres) =>
        input.Vessel is { } v ? Math.Max(v.Litres - liquidLitres, 0.05 * liquidLitres) : 0.5 * liquidLitres;
}
