using Alumroot.Chemistry.Planning;
using Alumroot.Numerics;
using Alumroot.Quantities;

namespace Alumroot.Chemistry.Assimilation;

/// <summary>Compares the last pH reading with what all that came before let expect.</summary>
internal static class QuarrelCheck
{
    private const double Tail = 0.01;

    // Below this distance from what the other readings let expect, in standard deviations, a reading lies within its span, and the draws are spared.
    private const double NearEnough = 1.5;
    private const double WorthNaming = 0.02;

    /// <summary>Explanations with what each would have read; and the quarrel if there is one.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="events">All events.</param>
    /// <param name="weighed">The hypotheses, weighed by all readings.</param>
    /// <param name="main">Fits of all readings as recorded.</param>
    internal static (IReadOnlyList<WeighedHypothesis> Weighed, Quarrel? Quarrel) Check(
        LakePlanInput plan, IReadOnlyList<BenchEvent> events, IReadOnlyList<WeighedHypothesis> weighed, IReadOnlyList<MapFit> main)
    {
        int last = LastPh(events);
        if (last < 0 || Fits(main)) return (weighed, null);
        BenchEvent[] before = [.. events.Take(last)];
        BenchEvent reading = events[last];
        if (Prediction(new BenchHypothesis.AsRecorded(), plan, before, reading) is not { } expected) return (weighed, null);
        double read = reading is BenchEvent.PhRead r ? r.Ph.Value : reading is BenchEvent.PhReadBetween b ? (b.Low.Value + b.High.Value) / 2 : 0;
        double low = expected.Quantile(Tail), high = expected.Quantile(1 - Tail);
        WeighedHypothesis[] told = [.. weighed.Select(h => h.ProbabilityRatio >= WorthNaming ? h with { WouldReadPh = h.Hypothesis is BenchHypothesis.AsRecorded ? expected.Span : Prediction(h.Hypothesis, plan, before, reading)?.Span } : h)];
        if (low <= read && read <= high) return (told, null);
        return (told, new Quarrel(Ph.FromValue(read), expected.Span, Ph.FromValue(low), Ph.FromValue(high), [.. told.Where(h => h.ProbabilityRatio >= WorthNaming)]));
    }

    /// <summary>Whether the last reading is near what the others let expect, in the likelier idea: the distance left after the fit over the root of one less its leverage.</summary>
    private static bool Fits(IReadOnlyList<MapFit> main)
    {
        MapFit? best = main.MaxBy(f => f.LogEvidence);
        if (best is null) return false;
        int k = best.Case.Log.Readings.ToList().FindLastIndex(r => r.IsPh);
        BenchReading reading = best.Case.Log.Readings[k];
        double own = Math.Sqrt(reading.Sd * reading.Sd + ReadingNoise.ModelWaveSd * ReadingNoise.ModelWaveSd), spread = best.SdOfPrediction(k) / own, left = (reading.Value - best.Predicted[k]) / own;
        return Math.Abs(left) < NearEnough * Math.Sqrt(Math.Max(1 - spread * spread, 0.01));
    }

    private static int LastPh(IReadOnlyList<BenchEvent> events)
    {
        for (int i = events.Count - 1; i >= 0; i--)
            if (events[i] is BenchEvent.PhRead or BenchEvent.PhReadBetween) return i;
        return -1;
    }

    private static Predictive? Prediction(BenchHypothesis hypothesis, LakePlanInput plan, BenchEvent[] before, BenchEvent reading)
    {
        MapFit[] fits = [.. BenchCase.Of(hypothesis, 1, plan, before).Select(c => MapFit.Along(c, 8)).OfType<MapFit>().SelectMany(f => f.Case.Log.Readings.Count == 0 ? [f] : f.Case.InGasLayers(3).Select(l => MapFit.InLayer(l, f, 8)).OfType<MapFit>())];
        if (fits.Length == 0) return null;
        Guesses guesses = Guesses.Draw(fits, Evidence.Shares([.. fits.Select(f => f.LogEvidence)]), new Reach(new PlanAim.AlkaliAmount(0), fits[0].Case.Stoichiometric, 0), Draws);
        // The step of the reading is the last one of what came before; its width follows from the reading itself.
        BenchReading own = BenchCase.Of(hypothesis, 1, plan, [.. before, reading]).First().Log.Readings.Last(r => r.IsPh);
        return guesses.All.Count == 0 ? null : new Predictive(guesses, own);
    }

    private const int Draws = 48;

    /// <summary>What a reading will show: the guesses, each with the reading's own spread.</summary>
    private sealed class Predictive(Guesses guesses, BenchReading reading)
    {
        internal Estimate Span => new(Quantile(0.5), Quantile(0.05), Quantile(0.95));

        internal double Quantile(double probability)
        {
            double low = -2, high = 16;
            for (int i = 0; i < 40; i++)
            {
                double mid = 0.5 * (low + high);
                if (Below(mid) < probability) low = mid;
                else high = mid;
            }
            return 0.5 * (low + high);
        }

        private double Below(double ph)
        {
            double sum = 0;
            foreach (Guess g in guesses.All)
                sum += g.Weight * Distributions.NormalFraction((ph - g.Ahead.PhNow - (g.Truth.Above(reading.Kind) - g.Truth.ModelOffsetPh)) / reading.Sd);
            return sum;
        }
    }
}
