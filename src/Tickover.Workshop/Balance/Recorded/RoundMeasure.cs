using System.Globalization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>A measure of the record that a round of balancing is read in.</summary>
/// <param name="Key">Its key in the list of measures.</param>
/// <param name="Kind">What of a barrel's reading it is.</param>
/// <param name="HeldRpm">Speed held, rpm; null at idle.</param>
public sealed record RoundMeasure(string Key, ReadKinds Kind, double? HeldRpm)
{
    private const double SecondsAnHour = 3600;
    private const double PascalsAKilopascal = 1000;

    /// <summary>Air at idle, at 1,500 and at 2,500 rpm; depression at idle and raised; λ of each barrel; speed as a mixture screw is tried.</summary>
    public static IReadOnlyList<RoundMeasure> All { get; } =
    [
        new("idleAirflow", ReadKinds.Air, null),
        new("airflow1500", ReadKinds.Air, 1500),
        new("airflow2500", ReadKinds.Air, 2500),
        new("idleDepression", ReadKinds.Vacuum, null),
        new("raisedDepression", ReadKinds.Vacuum, 3000),
        new("carburettorAirflow", ReadKinds.Air, null),
        new("lambdaBarrel", ReadKinds.Lambda, null),
        new("screwSpeed", ReadKinds.Speed, null),
    ];

    /// <summary>The measure with a key; null where no round is read in it.</summary>
    /// <param name="key">Such as "idleAirflow".</param>
    /// <returns>The measure.</returns>
    public static RoundMeasure? Find(string? key) => All.FirstOrDefault(m => string.Equals(m.Key, key, StringComparison.Ordinal));

    /// <summary>The measure a round of a speed and kind is kept in.</summary>
    /// <param name="heldRpm">Speed held, rpm; null at idle.</param>
    /// <param name="kind">What is asked for; air where several kinds are.</param>
    /// <returns>The measure; the nearest speed there is.</returns>
    public static RoundMeasure Of(double? heldRpm, ReadKinds kind) => All
        .Where(m => m.Kind == (kind is ReadKinds.Vacuum or ReadKinds.Lambda or ReadKinds.Speed ? kind : ReadKinds.Air) && m.HeldRpm is null == heldRpm is null)
        .MinBy(m => Math.Abs((m.HeldRpm ?? 0) - (heldRpm ?? 0)))!;

    /// <summary>The barrel a place of the record stands for.</summary>
    /// <param name="place">A barrel, a cylinder or a carburettor of one barrel.</param>
    /// <param name="plan">The engine.</param>
    /// <returns>Its number, also where this engine has none of that number; null where the place names none.</returns>
    public static int? BarrelOf(Place place, EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return !int.TryParse(place.Name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? null : place.Kind switch
        {
            PlaceKind.Barrel => number,
            PlaceKind.Cylinder => plan.Barrels.FirstOrDefault(b => b.Cylinders.Contains(number))?.Number,
            PlaceKind.Carburettor when plan.Carburettors.FirstOrDefault(c => c.Number == number) is { Barrels.Count: 1 } one => one.Barrels[0],
            _ => null,
        };
    }

    /// <summary>A barrel's reading with a value of this measure put in.</summary>
    /// <param name="reading">What was read of the barrel so far.</param>
    /// <param name="si">The value in SI; null where none could be read.</param>
    /// <returns>The reading.</returns>
    public BarrelReading Into(BarrelReading reading, double? si)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Kind switch
        {
            ReadKinds.Air => reading with { Air = si * SecondsAnHour },
            ReadKinds.Lambda => reading with { Lambda = si },
            ReadKinds.Speed => reading with { Rpm = si * 30 / Math.PI },
            _ => reading with { Vacuum = si / PascalsAKilopascal },
        };
    }
}
