namespace Tickover.Workshop.Visits.Advising;

/// <summary>What comes before what: earlier members first.</summary>
public enum AdviceRank
{
    /// <summary>Something that can hurt someone.</summary>
    Unsafe,

    /// <summary>A limit agreed with the owner is reached.</summary>
    StopAndAsk,

    /// <summary>The owner, a part or the clock has the ball.</summary>
    Waiting,

    /// <summary>A tap before the next work is shut.</summary>
    Gate,

    /// <summary>The state as found is not read, and cannot be read later.</summary>
    Baseline,

    /// <summary>Readings that work done since has made old.</summary>
    StaleReadings,

    /// <summary>Readings as left are missing before the car goes.</summary>
    AsLeft,

    /// <summary>Something else stands between the car and its hand-over.</summary>
    HandOver,

    /// <summary>A trial the mixture map asks for, while mixture is the work in hand.</summary>
    Mixture,

    /// <summary>The stage in hand or the next.</summary>
    Stage,

    /// <summary>The day promised is near or gone.</summary>
    DueDate,

    /// <summary>A question to the owner has no answer.</summary>
    Approval,

    /// <summary>An instrument in use is overdue for comparison.</summary>
    Instrument,

    /// <summary>A trial the mixture map asks for, while other work is in hand.</summary>
    MixtureLater,
}
