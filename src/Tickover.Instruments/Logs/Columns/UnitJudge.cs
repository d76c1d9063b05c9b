using System.Globalization;
using Tickover.Instruments.Logs.Mending;

namespace Tickover.Instruments.Logs.Columns;

/// <summary>Settles the unit of a column by its figures over the whole file: takes what the heading says where that can be, else what can.</summary>
internal sealed class UnitJudge(LogReadingSettings settings)
{
    private const double Celsius = 273.15;

    /// <summary>What can be, in SI (rpm for engines): bounds of median and of the high end. Common practice but where said.</summary>
    private static readonly Dictionary<LogQuantity, (double LeastMedian, double MostMedian, double LeastHigh, double MostHigh, string[] Units)> Possible = new()
    {
        [LogQuantity.EngineSpeed] = (200, 12_000, 500, 20_000, ["rpm", "1/s", "rpm x1000"]),
        [LogQuantity.Lambda] = (0.55, 1.9, 0.6, double.PositiveInfinity, ["λ", "AFR"]),
        [LogQuantity.CoolantTemperature] = (Celsius - 30, Celsius + 125, Celsius - 20, Celsius + 135, ["°C", "°F", "K"]),
        [LogQuantity.OilTemperature] = (Celsius - 30, Celsius + 150, Celsius - 20, Celsius + 165, ["°C", "°F", "K"]),
        [LogQuantity.AirTemperature] = (Celsius - 40, Celsius + 75, Celsius - 40, Celsius + 95, ["°C", "°F", "K"]),
        [LogQuantity.FuelPressure] = (1e3, 120e3, 2e3, 200e3, ["kPa", "psi", "mbar", "bar"]),
        [LogQuantity.RoadSpeed] = (0, 70, 0.5, 85, ["km/h", "mph", "m/s"]),
    };

    /// <summary>Settles one column; not for time and manifold pressure.</summary>
    /// <param name="choice">The column, with the unit the heading gives if it gives one.</param>
    /// <param name="figures">Its figures.</param>
    /// <returns>The column with its unit; null unit where its figures fit none.</returns>
    public ColumnChoice Settle(ColumnChoice choice, ReadOnlySpan<float> figures)
    {
        var spread = Spread.Of(figures);
        if (choice.Sureness is HowSure.Told && choice.Unit is not null)
        {
            return choice;
        }

        if (choice.Quantity is LogQuantity.Throttle)
        {
            return Throttle(choice, spread);
        }

        if (choice.Unit is { } said && Fits(choice.Quantity, said, spread))
        {
            return Assumed(choice);
        }

        var found = Possible[choice.Quantity].Units.Select(u => Named(choice.Quantity, u)).FirstOrDefault(u => Fits(choice.Quantity, u, spread));
        var figuresSaid = string.Create(CultureInfo.InvariantCulture, $"figures of {spread.Low:0.###} to {spread.High:0.###}");
        if (found is null)
        {
            return choice with { Unit = null, Why = $"{choice.Why}; {figuresSaid} fit no unit of it" };
        }

        var against = choice.Unit is { } wrong ? $"; written as {wrong.Name}, but {figuresSaid} can only be {found.Name}" : $"; {figuresSaid} make {found.Name}";
        return Assumed(choice with { Unit = found, Sureness = choice.Unit is null ? Softer(choice.Sureness) : HowSure.Guess, Why = choice.Why + against });
    }

    private static HowSure Softer(HowSure sureness) => sureness is HowSure.Sure ? HowSure.Likely : sureness;

    private LogUnit Named(LogQuantity quantity, string name) =>
        name is "AFR" ? LogUnits.AirFuelRatio(settings.AssumedStoichiometry) : LogUnits.Find(quantity, name)!;

    private ColumnChoice Assumed(ColumnChoice choice)
    {
        if (choice.Quantity is not LogQuantity.Lambda || !choice.Unit!.Name.StartsWith("AFR", StringComparison.Ordinal))
        {
            return choice;
        }

        // A bare "AFR" in the heading says nothing of the ratio behind it.
        var unit = choice.Unit == LogUnits.AirFuelRatio(LogUnits.UsualStoichiometry) ? LogUnits.AirFuelRatio(settings.AssumedStoichiometry) : choice.Unit;
        return choice with { Unit = unit, Why = choice.Why + "; the ratio it was multiplied by is assumed" };
    }

    private bool Fits(LogQuantity quantity, LogUnit unit, Spread spread)
    {
        var si = spread.In(unit, settings.BarometerPascals);
        var can = Possible[quantity];
        return si.Median >= can.LeastMedian && si.Median <= can.MostMedian && si.High >= can.LeastHigh && si.High <= can.MostHigh;
    }

    // All but degrees are only a scale: shut and wide open are found later.
    private static ColumnChoice Throttle(ColumnChoice choice, Spread spread)
    {
        var unit = choice.Unit ?? LogUnits.Find(LogQuantity.Throttle, spread.High <= 1.3 ? "fraction" : spread.High <= 5.5 ? "V" : "%")!;
        return choice.Unit is not null
            ? choice
            : choice with { Unit = unit, Sureness = Softer(choice.Sureness), Why = string.Create(CultureInfo.InvariantCulture, $"{choice.Why}; figures up to {spread.High:0.##} taken as {unit.Name} of its travel") };
    }
}
