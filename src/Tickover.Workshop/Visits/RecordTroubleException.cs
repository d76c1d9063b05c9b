namespace Tickover.Workshop.Visits;

/// <summary>The record cannot be read or written just now, or at all: disk full, locked, damaged, not ours.</summary>
public sealed class RecordTroubleException : Exception
{
    /// <summary>Makes a trouble of unknown kind.</summary>
    public RecordTroubleException()
        : this("The record cannot be reached.")
    {
    }

    /// <summary>Makes a trouble told in plain words.</summary>
    /// <param name="message">What is wrong, where, and what to do.</param>
    public RecordTroubleException(string message)
        : base(message)
    {
    }

    /// <summary>Makes a trouble told in plain words with what lies behind it.</summary>
    /// <param name="message">What is wrong, where, and what to do.</param>
    /// <param name="innerException">What lies behind it.</param>
    public RecordTroubleException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
