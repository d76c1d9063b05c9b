using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Tickover.Workshop.Visits;

namespace Tickover.Records;

/// <summary>Tells what is wrong with a database in plain words.</summary>
internal static class Trouble
{
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int Constraint = 19;
    private const int MissingReference = 787;
    private const int NotADatabase = 26;

    /// <summary>ENOSPC.</summary>
    private const int NoSpaceOnLinux = 28;

    /// <summary>ERROR_DISK_FULL.</summary>
    private const int NoSpaceOnWindows = 112;

    /// <summary>What an entry contradicts in the record, in words; null where the fault is another.</summary>
    public static string? Contradiction(DbUpdateException fault) => fault.InnerException switch
    {
        SqliteException { SqliteExtendedErrorCode: MissingReference } or PostgresException { SqlState: PostgresErrorCodes.ForeignKeyViolation } =>
            "This belongs to a visit, a car or a person that the record does not hold. Load the page again.",
        SqliteException { SqliteErrorCode: Constraint } or PostgresException { SqlState: PostgresErrorCodes.UniqueViolation } =>
            "There is one of that name already. Choose another name.",
        _ => null,
    };

    /// <summary>Whether a fault is the database's.</summary>
    public static bool Is(Exception fault) => Cause(fault) is not null;

    /// <summary>Whether a fault is the database's or that of a file around it, such as a backup or the folder.</summary>
    public static bool IsAround(Exception fault) => fault is IOException or UnauthorizedAccessException || Is(fault);

    /// <summary>The fault in plain words.</summary>
    public static RecordTroubleException Tell(Exception fault, string where) => new(Sentence(Cause(fault) ?? fault, where), fault);

    /// <summary>Whether a file could not be written because the disk is full.</summary>
    public static bool IsFull(IOException fault) => (fault.HResult & 0xFFFF) is NoSpaceOnLinux or NoSpaceOnWindows;

    private static Exception? Cause(Exception fault) => fault switch
    {
        SqliteException or NpgsqlException or TimeoutException => fault,
        DbUpdateException { InnerException: { } inner } => Cause(inner),
        InvalidOperationException { InnerException: { } inner } => Cause(inner),
        _ => null,
    };

    private static string DiskFull(string where) => $"The disk is full: {where} cannot grow. Nothing of this entry was kept. Make room and send it again.";

    private static string Sentence(Exception cause, string where) => cause switch
    {
        SqliteException { SqliteErrorCode: Full } => DiskFull(where),
        IOException file when IsFull(file) => DiskFull(where),
        UnauthorizedAccessException => $"{where} may not be read or written. See to the rights of the file and its folder.",
        SqliteException { SqliteErrorCode: Busy or Locked } => $"Another program holds {where}. Nothing of this entry was kept; it may be sent again. Close the other program if this lasts.",
        SqliteException { SqliteErrorCode: ReadOnly } => $"{where} may not be written. See to the rights of the file and its folder.",
        SqliteException { SqliteErrorCode: Corrupt or NotADatabase } => $"{where} is damaged. Stop the server, keep the file aside, and restore the last backup with: tickover restore",
        SqliteException { SqliteErrorCode: InputOutput } => $"The disk under {where} gives errors. Copy the folder to another disk before going on.",
        SqliteException { SqliteErrorCode: CannotOpen } => $"{where} cannot be opened. See that the disk is there, that the file has not been moved, and that it and its folder may be read and written.",
        NpgsqlException { InnerException: SocketException or TimeoutException } => $"{where} does not answer. See that its server runs and the network is up.",
        _ => $"{where} refuses: {cause.Message}",
    };
}
