namespace Tickover.Workshop.Visits;

/// <summary>One stay of a car in the workshop, from arrival to hand-over.</summary>
public sealed record Visit : RecordItem<Visit>
{
    /// <summary>The car.</summary>
    public Id<CustomerCar> Car { get; init; }

    /// <summary>The owner at the time.</summary>
    public Id<Owner>? Owner { get; init; }

    /// <summary>Short number for papers, counted up by the record.</summary>
    public int Number { get; init; }

    /// <summary>The day it came.</summary>
    public DateOnly ArrivedOn { get; init; }

    /// <summary>The day it was promised for; null where none was.</summary>
    public DateOnly? DueOn { get; init; }

    /// <summary>The day it went; null while it is here.</summary>
    public DateOnly? LeftOn { get; init; }

    /// <summary>The owner's complaint, word for word.</summary>
    public string Complaint { get; init; } = "";

    /// <summary>What was found in one paragraph, for the head of the account.</summary>
    public string Summary { get; init; } = "";

    /// <summary>What "right" means to the owner, and what must stay original.</summary>
    public string Wishes { get; init; } = "";

    /// <summary>When it last ran well, how long it stood, what was changed before.</summary>
    public string Story { get; init; } = "";

    /// <summary>The fuel the owner means to use.</summary>
    public string Fuel { get; init; } = "";

    /// <summary>The work agreed on.</summary>
    public string Scope { get; init; } = "";

    /// <summary>Hours estimated; null where no estimate was given.</summary>
    public decimal? EstimateHours { get; init; }

    /// <summary>Price estimated, in the workshop's money; null where none was given.</summary>
    public decimal? Estimate { get; init; }

    /// <summary>The sum beyond which the owner is asked first; null where none was agreed.</summary>
    public decimal? StopAndAsk { get; init; }

    /// <summary>How and when the scope was agreed, such as "signed 12 November".</summary>
    public string ScopeAgreed { get; init; } = "";

    /// <summary>Odometer on arrival, in the car's unit.</summary>
    public int? OdometerIn { get; init; }

    /// <summary>Odometer on leaving.</summary>
    public int? OdometerOut { get; init; }

    /// <summary>Who has the ball.</summary>
    public WaitsOn WaitsOn { get; init; }

    /// <summary>What is waited for; empty while the work goes on.</summary>
    public string WaitingFor { get; init; } = "";

    /// <summary>When the waiting began.</summary>
    public DateOnly? WaitingSince { get; init; }

    /// <summary>When it should end.</summary>
    public DateTimeOffset? WaitingUntil { get; init; }
}
