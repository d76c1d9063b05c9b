namespace Tickover.Workshop.Visits;

/// <summary>How far one stage of a visit has got.</summary>
public sealed record StageMark : RecordItem<StageMark>, IOfVisit
{
    /// <summary>The identifier of a stage's mark: the same wherever it is made, so that two tablets that begin a stage at once mean one mark.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="stage">The stage.</param>
    /// <returns>The identifier.</returns>
    public static Id<StageMark> IdFor(Id<Visit> visit, Stage stage)
    {
        Span<byte> bytes = stackalloc byte[16];
        visit.Value.TryWriteBytes(bytes);

        // The last byte of a visit's number is random; the stage turns it into ten numbers that are no visit's own table.
        bytes[^1] ^= (byte)(stage + 1);
        return new Id<StageMark>(new Guid(bytes));
    }

    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage.</summary>
    public Stage Stage { get; init; }

    /// <summary>How far it has got.</summary>
    public StageState State { get; init; }

    /// <summary>The day it was begun.</summary>
    public DateOnly? BegunOn { get; init; }

    /// <summary>The day it was done, or found not to be needed.</summary>
    public DateOnly? EndedOn { get; init; }

    /// <summary>Why it is not needed, or what is left.</summary>
    public string Note { get; init; } = "";
}
