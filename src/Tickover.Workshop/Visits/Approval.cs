namespace Tickover.Workshop.Visits;

/// <summary>A question to the owner and the answer: the stop-and-ask in writing.</summary>
public sealed record Approval : RecordItem<Approval>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The finding it is about; null where it is about none.</summary>
    public Id<Finding>? Finding { get; init; }

    /// <summary>What was asked.</summary>
    public string Asked { get; init; } = "";

    /// <summary>Extra price named, in the workshop's money.</summary>
    public decimal? Price { get; init; }

    /// <summary>The day it was asked.</summary>
    public DateOnly AskedOn { get; init; }

    /// <summary>What the owner said.</summary>
    public ApprovalAnswer Answer { get; init; }

    /// <summary>The owner's words, and how they came: by telephone, in writing.</summary>
    public string AnswerWords { get; init; } = "";

    /// <summary>The day of the answer.</summary>
    public DateOnly? AnsweredOn { get; init; }
}
