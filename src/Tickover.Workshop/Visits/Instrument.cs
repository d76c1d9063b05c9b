namespace Tickover.Workshop.Visits;

/// <summary>A thing that measures, with what it is good to and when it was last checked.</summary>
public sealed record Instrument : RecordItem<Instrument>
{
    /// <summary>What people call it here.</summary>
    public string Name { get; init; } = "";

    /// <summary>Number on the instrument.</summary>
    public string SerialNumber { get; init; } = "";

    /// <summary>What it is good to, as typed with its unit, such as "±0.25 kg/h" or "±2 %"; empty where unknown.</summary>
    public string GoodTo { get; init; } = "";

    /// <summary>The day it was last compared with something better; null where never.</summary>
    public DateOnly? CalibratedOn { get; init; }

    /// <summary>The day the next comparison is due; null where no day is set.</summary>
    public DateOnly? DueOn { get; init; }

    /// <summary>How it was compared, and adaptors it needs.</summary>
    public string Note { get; init; } = "";
}
