namespace Tickover.Workshop.Visits;

/// <summary>A car that has been here: what stays the same from visit to visit.</summary>
/// <remarks>Its physical description over time is in <see cref="CarDescription"/>, the parts on it in <see cref="Component"/>.</remarks>
public sealed record CustomerCar : RecordItem<CustomerCar>
{
    /// <summary>The name its pages and documents are filed under; see <see cref="Cars.CarId"/>.</summary>
    public string Slug { get; init; } = "";

    /// <summary>The car as people call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>Registration mark.</summary>
    public string Registration { get; init; } = "";

    /// <summary>Chassis or frame number.</summary>
    public string ChassisNumber { get; init; } = "";

    /// <summary>Year it was built, as far as known.</summary>
    public int? Year { get; init; }

    /// <summary>Who owns it now.</summary>
    public Id<Owner>? Owner { get; init; }

    /// <summary>Unit its odometer counts in.</summary>
    public OdometerUnit OdometerUnit { get; init; }

    /// <summary>What to remember: keys, alarms, how the bonnet opens.</summary>
    public string Note { get; init; } = "";
}
