using System.Globalization;
using Alumroot.App.Hosting;
using Alumroot.App.Studio;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Engines;
using Microsoft.AspNetCore.Builder;

namespace Alumroot.Benchmarks;

/// <summary>The plan page as a browser asks for it: request on loopback, plan with its spans, rendering, answer. Every request is another plan.</summary>
[Config(typeof(WithPercentile))]
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 60, iterationCount: 200, invocationCount: 1)]
public class PlanPageBenchmarks
{
    private DemoStudio _studio = null!;
    private WebApplication _app = null!;
    private HttpClient _client = null!;
    private int _number;

    /// <summary>Starts the host on a free port.</summary>
    [GlobalSetup]
    public async Task Start()
    {
        _studio = DemoStudio.Open(TimeProvider.System);
        _app = AppHost.Build(new AppOptions { Demo = true }, _studio.Store);
        await _app.StartAsync();
        _client = new HttpClient { BaseAddress = new Uri(_app.Urls.First()) };
    }

    /// <summary>Stops it.</summary>
    [GlobalCleanup]
    public async Task Stop()
    {
        _client.Dispose();
        await _app.StopAsync();
        await _app.DisposeAsync();
        _studio.Dispose();
    }

    /// <summary>A madder lake, a little more alum each time.</summary>
    [Benchmark]
    public async Task<int> MadderLake()
    {
        string grams = (40 + 0.1 * (_number++ % 200)).ToString("0.0", CultureInfo.InvariantCulture);
        string page = await _client.GetStringAsync(new Uri($"/lakes/plan?salt=potash-alum&salt-amount={grams}+g&alkali=soda-ash&dyestuff=madder&dry=100+g&water=3+L&temp=60+C&to-ph=6.5", UriKind.Relative));
        return page.Length;
    }

    private sealed class WithPercentile : ManualConfig
    {
        public WithPercentile() => AddColumn(StatisticColumn.P50, StatisticColumn.P95);
    }
}
