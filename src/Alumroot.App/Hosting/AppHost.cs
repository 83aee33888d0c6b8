using System.IO.Compression;
using Alumroot.App.Bench;
using Alumroot.App.Layout;
using Alumroot.App.Sharing;
using Alumroot.Studio;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.ResponseCompression;

namespace Alumroot.App.Hosting;

/// <summary>Builds the web host: Kestrel on this machine's own address, the pages, and nothing from elsewhere.</summary>
public static class AppHost
{
    /// <summary>The host, ready to start. Its address is in <c>Urls</c> once it runs.</summary>
    /// <param name="options">Port, demo, clock.</param>
    /// <param name="studio">The open studio; who opened it closes it.</param>
    public static WebApplication Build(AppOptions options, StudioStore studio) => Build(options, studio, _ => { });

    internal static WebApplication Build(AppOptions options, StudioStore studio, Action<IServiceCollection> more)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(studio);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = "alumroot",
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            if (options.Share is null) kestrel.ListenLocalhostOrFree(options.Port);
            else kestrel.ListenAnyIP(options.Port);
            kestrel.Limits.MaxRequestBodySize = Limits.MostRequestBytes;
        });
        builder.Logging.ClearProviders();
        builder.Logging.AddSimpleConsole(console => console.SingleLine = true);
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None); // the verb says it in one sentence
        AddServices(builder.Services, options, studio);
        more(builder.Services);

        WebApplication app = builder.Build();
        app.UseMiddleware<OwnNamesOnly>();
        app.UseMiddleware<SafetyHeaders>();
        app.UseRateLimiter();
        app.UseMiddleware<EnteredOnly>();
        app.UseMiddleware<TooLarge>();
        app.UseResponseCompression();
        app.UseExceptionHandler("/unexpected", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseMiddleware<TroubleAsPage>();
        app.UseAntiforgery();
        app.MapHealthChecks("/healthz");
        app.MapStaticAssets();
        app.MapRazorComponents<Document>();
        app.MapRecord();
        app.MapPhotos();
        app.MapPdf();
        app.MapSharing();
        return app;
    }

    private static void AddServices(IServiceCollection services, AppOptions options, StudioStore studio)
    {
        services.AddSingleton(options);
        services.AddSingleton(options.Clock);
        services.AddSingleton(studio);
        services.AddSingleton<PlanShelf>();
        services.AddSingleton<Print.Sheets.FootLine>();
        services.AddSingleton<Print.Sheets.SheetMaker>();
        services.AddSingleton(s => new Share(options.Share, options.Share is null ? [] : OwnAddresses.Find(), s.GetRequiredService<IDataProtectionProvider>()));
        services.AddRateLimiter(Attempts.Limit);
        services.Configure<FormOptions>(form => form.MultipartBodyLengthLimit = Limits.MostRequestBytes);
        services.AddSingleton<IHostLifetime, EndedByTheVerb>();
        services.AddRazorComponents();
        services.AddHttpContextAccessor();
        services.AddHealthChecks();
        services.AddResponseCompression(compression => compression.Providers.Add<BrotliCompressionProvider>());
        services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Optimal);
        // The keys stay with the studio, so that a form that was open before a power cut is still taken after it.
        services.AddDataProtection().SetApplicationName("alumroot").PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(studio.Folder, "keys")));
    }

    private static void ListenLocalhostOrFree(this Microsoft.AspNetCore.Server.Kestrel.Core.KestrelServerOptions kestrel, int port)
    {
        // "localhost" listens on both loopback addresses, but a free port can only be asked for on one.
        if (port == 0) kestrel.Listen(System.Net.IPAddress.Loopback, 0);
        else kestrel.ListenLocalhost(port);
    }

    /// <summary>Leaves Ctrl-C to the verb that started the host.</summary>
    private sealed class EndedByTheVerb : IHostLifetime
    {
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
