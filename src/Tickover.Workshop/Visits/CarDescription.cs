namespace Tickover.Workshop.Visits;

/// <summary>The car document that holds from a day on: together they are the model of the car at any date.</summary>
public sealed record CarDescription : RecordItem<CarDescription>, IAppendOnly
{
    /// <summary>The car.</summary>
    public Id<CustomerCar> Car { get; init; }

    /// <summary>First day on which the car was as described.</summary>
    public DateOnly Since { get; init; }

    /// <summary>The car document, as written.</summary>
    public string Document { get; init; } = "";

    /// <summary>Why it changed.</summary>
    public string Reason { get; init; } = "";

    /// <summary>The visit that changed it.</summary>
    public Id<Visit>? Visit { get; init; }
}
