namespace Tickover.Records;

/// <summary>Where a record lies: a file, or a PostgreSQL database by its connection string.</summary>
/// <param name="DataFolder">The server's folder; the SQLite file lies in it, and a note of which record belongs here.</param>
/// <param name="ConnectionString">Connection string of a PostgreSQL database; null for the file.</param>
public sealed record RecordPlace(string DataFolder, string? ConnectionString = null)
{
    /// <summary>Name of the SQLite file.</summary>
    public const string FileName = "workshop.db";

    /// <summary>How long a database is waited for that another program holds.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>Path of the SQLite file.</summary>
    public string File => Path.Combine(DataFolder, FileName);

    /// <summary>Whether it is a file.</summary>
    public bool IsFile => ConnectionString is null;

    /// <summary>The place in words, without any password.</summary>
    public string Words => ConnectionString is null ? File : Opening.ConnectionWords.Of(ConnectionString);
}
