using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Store;

/// <summary>Brings the file of a record to the form this program knows, one numbered step of SQL after another, with a copy of the file made first.</summary>
internal sealed class Migrator(IReadOnlyList<string> steps, TimeProvider clock)
{
    /// <summary>The steps this program knows, in order.</summary>
    public static IReadOnlyList<string> KnownSteps { get; } =
        [.. typeof(Migrator).Assembly.GetManifestResourceNames().Where(n => n.StartsWith("migrations/", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Text)];

    /// <summary>The form that a file has: how many steps it went through.</summary>
    public static int VersionOf(SqliteConnection connection)
    {
        if (connection.Number("SELECT count(*) FROM sqlite_schema") == 0) return 0;
        if (connection.Number("PRAGMA application_id") != Database.ApplicationId)
            throw new StudioException(new StudioFailure(TroubleKind.Damaged, "the file is a database, but not a studio's"));
        return (int)connection.Number("PRAGMA user_version");
    }

    /// <summary>Whether there is nothing to do.</summary>
    /// <exception cref="StudioException">A newer program wrote the file.</exception>
    public bool IsCurrent(SqliteConnection connection)
    {
        int version = VersionOf(connection);
        if (version > steps.Count) throw new StudioException(new StudioFailure(TroubleKind.Newer, string.Create(CultureInfo.InvariantCulture, $"form {version}, known to {steps.Count}")));
        return version == steps.Count;
    }

    /// <summary>Takes the steps that are missing, each whole or not at all.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="backups">Where the copy is put.</param>
    public void Migrate(SqliteConnection connection, string backups)
    {
        if (IsCurrent(connection)) return;
        int version = VersionOf(connection);
        if (version > 0)
        {
            Directory.CreateDirectory(backups);
            string stamp = clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
            connection.Run("VACUUM INTO $file", ("$file", Path.Combine(backups, string.Create(CultureInfo.InvariantCulture, $"before-form-{version + 1}-{stamp}-{Guid.NewGuid():N}.db"))));
        }
        for (int next = version; next < steps.Count; next++)
        {
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
            connection.Run(steps[next]);
            connection.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {Database.ApplicationId}; PRAGMA user_version = {next + 1}"));
            transaction.Commit();
        }
    }

    private static string Text(string resource)
    {
        using Stream stream = typeof(Migrator).Assembly.GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
