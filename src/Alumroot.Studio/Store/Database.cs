using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Store;

/// <summary>Opens connections to the one file of the record, all in the same way: write-ahead log, every commit flushed, keys held.</summary>
internal sealed class Database(string file, int? mostPages = null)
{
    /// <summary>Marks the file as a studio's: the letters "Alum".</summary>
    public const int ApplicationId = 0x416C756D;

    /// <summary>How long a writer waits for another before it gives up, in seconds.</summary>
    private const int WaitSeconds = 30;

    public string File { get; } = file;

    public SqliteConnection Open()
    {
        var connection = new SqliteConnection(ConnectionText(SqliteOpenMode.ReadWriteCreate));
        try
        {
            connection.Open();
            connection.Run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON");
            // A bound on the file's size stands in for a full disk in the tests.
            if (mostPages is { } pages) connection.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA max_page_count = {pages}"));
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public StudioContext Context() => new(Open());

    /// <summary>Lets go of the connections that are kept for reuse, so that the file can be moved.</summary>
    public void Release()
    {
        using var connection = new SqliteConnection(ConnectionText(SqliteOpenMode.ReadWriteCreate));
        SqliteConnection.ClearPool(connection);
    }

    /// <summary>Opens another file only to look at it.</summary>
    public static SqliteConnection OpenToRead(string file)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        try
        {
            connection.Open();
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private string ConnectionText(SqliteOpenMode mode) =>
        new SqliteConnectionStringBuilder { DataSource = File, Mode = mode, DefaultTimeout = WaitSeconds, ForeignKeys = true }.ToString();
}

/// <summary>Short forms for plain commands.</summary>
internal static class Commands
{
    public static int Run(this SqliteConnection connection, string sql, params (string Name, object? Value)[] values)
    {
        using SqliteCommand command = Command(connection, sql, values);
        return command.ExecuteNonQuery();
    }

    public static long Number(this SqliteConnection connection, string sql, params (string Name, object? Value)[] values)
    {
        using SqliteCommand command = Command(connection, sql, values);
        return Convert.ToInt64(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    public static IReadOnlyList<string> Texts(this SqliteConnection connection, string sql, params (string Name, object? Value)[] values)
    {
        using SqliteCommand command = Command(connection, sql, values);
        using SqliteDataReader reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read()) texts.Add(reader.GetString(0));
        return texts;
    }

    public static IReadOnlyList<long> Numbers(this SqliteConnection connection, string sql, params (string Name, object? Value)[] values)
    {
        using SqliteCommand command = Command(connection, sql, values);
        using SqliteDataReader reader = command.ExecuteReader();
        var numbers = new List<long>();
        while (reader.Read()) numbers.Add(reader.GetInt64(0));
        return numbers;
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, (string Name, object? Value)[] values)
    {
        SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        foreach ((string name, object? value) in values) command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        return command;
    }
}
