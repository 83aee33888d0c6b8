namespace Alumroot.Numerics;

/// <summary>A reproducible stream of random numbers: the same seed gives the same numbers on every machine and in every version.</summary>
/// <remarks>SplitMix64 (Steele, Lea, Flood 2014, Fast splittable pseudorandom number generators, OOPSLA; constants from memory). Not for secrets.</remarks>
public sealed class SeededRandom(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong NextBits()
    {
        _state += 0x9E3779B97F4A7C15UL;
        ulong z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }

    /// <summary>A number above 0 and below 1.</summary>
    public double NextFraction() => ((NextBits() >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 to below <paramref name="limit"/>.</summary>
    public int NextBelow(int limit) => (int)(NextFraction() * limit);

    /// <summary>A draw from the standard normal distribution.</summary>
    public double NextNormal() => Distributions.NormalQuantile(NextFraction());
}
