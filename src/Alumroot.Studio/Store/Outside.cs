using Microsoft.Data.Sqlite;

namespace Alumroot.Studio.Store;

/// <summary>Turns what the machine says into one of the failures a maker can do something about.</summary>
internal static class Outside
{
    // https://www.sqlite.org/rescode.html
    private const int Busy = 5, TableLocked = 6, ReadOnly = 8, IoError = 10, Full = 13, CannotOpen = 14;

    // ENOSPC and EDQUOT of Linux, ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL of Windows.
    private static readonly int[] DiskFull = [28, 122, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    /// <summary>Does the work; a failure of disk, rights or file comes out as a <see cref="StudioException"/>.</summary>
    public static T Do<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (FailureOf(e) is { } failure)
        {
            throw new StudioException(failure, e);
        }
    }

    public static void Do(Action work) => Do(() =>
    {
        work();
        return true;
    });

    private static StudioFailure? FailureOf(Exception e) => e switch
    {
        StudioException => null,
        SqliteException sqlite => new StudioFailure(KindOf(sqlite.SqliteErrorCode), sqlite.Message),
        UnauthorizedAccessException => new StudioFailure(TroubleKind.Unwritable, e.Message),
        IOException when DiskFull.Contains(e.HResult) => new StudioFailure(TroubleKind.Full, e.Message),
        IOException => new StudioFailure(TroubleKind.Unwritable, e.Message),
        Microsoft.EntityFrameworkCore.DbUpdateException { InnerException: { } inner } => FailureOf(inner),
        _ => null,
    };

    private static TroubleKind KindOf(int code) => code switch
    {
        Busy or TableLocked => TroubleKind.Locked,
        ReadOnly or CannotOpen or IoError => TroubleKind.Unwritable,
        Full => TroubleKind.Full,
        // Not a database, damaged pages, tables that are not there.
        _ => TroubleKind.Damaged,
    };
}
