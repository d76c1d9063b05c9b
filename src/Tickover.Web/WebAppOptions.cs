using Tickover.Web.Lan;

namespace Tickover.Web;

/// <summary>Where the tablet app finds its cars and where it listens.</summary>
public sealed record WebAppOptions
{
    /// <summary>The address used where none is given: this machine only.</summary>
    public const string DefaultAddress = "http://127.0.0.1:5480";

    /// <summary>Folder of the workshop's record and of what belongs to this server; made if it is not there.</summary>
    public required string DataFolder { get; init; }

    /// <summary>Connection string of a PostgreSQL database that holds the record; null for a file in the folder.</summary>
    public string? Database { get; init; }

    /// <summary>Whether a backup is made each day into a folder beside the record; only for a record in a file.</summary>
    public bool DailyBackups { get; init; }

    /// <summary>The clock; the machine's own where nothing else is given.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Address to listen on: always one of this machine's own. Its port is the port on the network too.</summary>
    public string Address { get; init; } = DefaultAddress;

    /// <summary>How tablets on the workshop's network get in; null where they do not.</summary>
    public LanOptions? Lan { get; init; }

    /// <summary>Folder of sample car documents that a new car can start from; null where there is none.</summary>
    public string? SamplesFolder { get; init; }

    /// <summary>Folder of the documentation (checks.md and physics); null to use the pages embedded in the program.</summary>
    public string? DocumentationFolder { get; init; }
}
