using Alumroot.Chemistry.Planning;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>What a reading is of.</summary>
internal enum ReadingKind
{
    Strip,
    Meter,
    LnConductivity,
    Temperature,
}

/// <summary>One reading: of what, after which step, its value, its own standard deviation, and where along the whole addition it was taken.</summary>
internal readonly record struct BenchReading(ReadingKind Kind, int Step, double Value, double Sd, double Place)
{
    internal bool IsPh => Kind is ReadingKind.Strip or ReadingKind.Meter;
}

/// <summary>All events as steps of one addition: what is in the bath after each, and the readings.</summary>
/// <param name="Alkali">Alkali in the bath after each step, units.</param>
/// <param name="SaltShare">Share of the plan's salt in the bath after each step.</param>
/// <param name="Readings">The readings, in order.</param>
/// <param name="Wave">How readings stray together.</param>
internal sealed record BenchLog(IReadOnlyList<double> Alkali, IReadOnlyList<double> SaltShare, IReadOnlyList<BenchReading> Readings, ReadingWave Wave)
{
    // A bath without a trace of a component has no logarithm of it.
    private const double Trace = 1e-7;

    /// <summary>The log up to and with so many readings.</summary>
    internal BenchLog Until(int readings)
    {
        BenchReading[] first = [.. Readings.Take(readings)];
        int steps = first.Max(r => r.Step) + 1;
        return new BenchLog([.. Alkali.Take(steps)], [.. SaltShare.Take(steps)], first, new ReadingWave(first, first[^1].Place));
    }

    /// <summary>What had been poured of that which goes in last: units of alkali, or the share of the salt.</summary>
    internal double PouredAt(int step, bool saltFirst) => saltFirst ? Alkali[step] : SaltShare[step];

    internal double AlkaliUnits => Alkali[^1];

    internal double Share => SaltShare[^1];

    /// <summary>Makes the log for a hypothesis.</summary>
    /// <param name="events">The events.</param>
    /// <param name="input">The plan, as the hypothesis has it.</param>
    /// <param name="stoichiometric">Alkali that throws all metal down by the plan as it stands, units.</param>
    /// <param name="hypothesis">The hypothesis.</param>
    internal static BenchLog Of(IReadOnlyList<BenchEvent> events, LakePlanInput input, double stoichiometric, BenchHypothesis hypothesis)
    {
        bool saltFirst = input.Order == OrderOfAddition.SaltFirst;
        double allSalt = input.Salts.Sum(s => s.Amount.Grams);
        double alkali = 0, salt = 0;
        var alkalis = new List<double>();
        var shares = new List<double>();
        var readings = new List<BenchReading>();
        int portion = 0;
        Step();
        foreach (BenchEvent e in events)
        {
            switch (e)
            {
                case BenchEvent.AlkaliAdded a:
                    alkali += a.Units - BowlIn(++portion);
                    Step();
                    break;
                case BenchEvent.SaltAdded s:
                    salt += s.Amount.Grams - BowlIn(++portion);
                    Step();
                    break;
                case BenchEvent.PhRead r:
                    Ph(r.Ph.Value, r.StepPh, r.Instrument);
                    break;
                case BenchEvent.PhReadBetween b:
                    Ph((b.Low.Value + b.High.Value) / 2, b.High.Value - b.Low.Value, b.Instrument);
                    break;
                case BenchEvent.ConductivityRead c:
                    if (c.Conductivity.MicrosiemensPerCentimetre > 0)
                        readings.Add(new BenchReading(ReadingKind.LnConductivity, alkalis.Count - 1, Math.Log(c.Conductivity.MicrosiemensPerCentimetre), ReadingNoise.ConductivityLnSd, 0));
                    break;
                case BenchEvent.TemperatureRead:
                    break;
            }
        }
        if (events.Any(e => e is BenchEvent.TemperatureRead)) readings.Add(new BenchReading(ReadingKind.Temperature, 0, 0, ReadingNoise.ThermometerKelvin, 0));
        return new BenchLog(alkalis, shares, readings, new ReadingWave(readings, Place()));

        void Step()
        {
            alkalis.Add(Math.Max(alkali, Trace * stoichiometric));
            shares.Add(saltFirst ? 1 : Math.Max(salt / allSalt, Trace));
        }

        void Ph(double value, double width, PhInstrument instrument)
        {
            readings.Add(new BenchReading(instrument == PhInstrument.Strip ? ReadingKind.Strip : ReadingKind.Meter, alkalis.Count - 1, value, ReadingNoise.PhSd(width, instrument, saltFirst ? Place() : 1), Place()));
        }

        double Place() => saltFirst ? alkali / stoichiometric : salt / allSalt;

        double BowlIn(int number) => hypothesis is BenchHypothesis.PortionBowlNotTared t && t.PortionNumber == number ? t.Bowl.Grams : 0;
    }
}
