using System.Globalization;
using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>What is wrong or odd about a round, in sentences that say what to do.</summary>
internal static class RoundFaults
{
    private const double Beyond = 2;
    private const double Doubled = 2;
    private const double PoundInKilograms = 0.45359237;
    private const double InchOfMercury = 3.386;             // kPa
    private const double LittleVacuum = 25;                 // kPa; an idling engine shows some 45 to 65 (common practice)
    private const double SpeedOff = 0.2;                    // part of the speed held: beyond that it was another
    private const int EnoughToBeOdd = 4;

    /// <summary>Idle air to expect of a barrel by swept volume and speed.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="rpm">Engine speed.</param>
    /// <returns>kg/h, from and to.</returns>
    public static (double Low, double High) PlausibleIdle(EnginePlan plan, double rpm)
    {
        var fed = plan.SweptCubicCentimetres * plan.Cylinders / plan.Barrels.Count / 1e6;
        return (3600 * IdleAir.KilogramsPerSecond(fed, rpm, IdleAir.LeastFilling), 3600 * IdleAir.KilogramsPerSecond(fed, rpm, IdleAir.MostFilling));
    }

    /// <summary>Why a round does not count; empty where it does.</summary>
    /// <param name="round">The round.</param>
    /// <param name="book">The book it is in.</param>
    /// <returns>A sentence or two.</returns>
    public static string Void(BalanceRound round, BalanceBook book)
    {
        var strangers = round.Readings.Select(r => r.Barrel).Where(b => b < 1 || b > book.Plan.Barrels.Count).ToList();
        if (strangers.Count > 0)
        {
            return Line($"Barrel {strangers[0]} is not on this engine, which has {book.Plan.Barrels.Count}. Are these readings of another car? Give them their right numbers, or strike the round out.");
        }

        if (round.Readings.Append(round.Again).OfType<BarrelReading>().Select(Impossible).FirstOrDefault(w => w.Length > 0) is { } impossible)
        {
            return impossible;
        }

        if (round.Again is { Air: { } again } && round.Readings.FirstOrDefault(r => r.Air is not null) is { Air: { } first } begun && Math.Abs(again - first) > book.Limits.Drift(first) + 1e-9)
        {
            return Line($"Barrel {begun.Barrel} moved by {Math.Abs(again - first):0.00} kg/h while the round was read, more than {book.Limits.Drift(first):0.00}. Let the engine settle and read all again.");
        }

        return "";
    }

    // no figure of a running engine, by kind; empty where all can be
    private static string Impossible(BarrelReading reading) => reading switch
    {
        { Air: { } air } when !(air is >= 0 and < 400) => Line($"Barrel {reading.Barrel}: {air} kg/h is no airflow of a barrel. Read it again."),
        { Rpm: { } rpm } when !(rpm is > 0 and < 15_000) => Line($"Barrel {reading.Barrel}: {rpm} rpm is no engine speed. Mend it, or leave it out."),
        { Vacuum: { } vacuum } when !(vacuum is > -20 and < 95) => Line($"Barrel {reading.Barrel}: {vacuum} kPa is more than the air's own pressure allows. Was it read in mmHg or inHg? 1 inHg is 3.39 kPa, 100 mmHg 13.3 kPa."),
        { Lambda: { } lambda } when !(lambda is > 0.4 and < 4) => Line($"Barrel {reading.Barrel}: {lambda} is no lambda. Was it kilograms of air to one of fuel? Of petrol, divide by 14.7."),
        { Header: { } header } when !(header is > -40 and < 1200) => Line($"Barrel {reading.Barrel}: {header} °C is no temperature of a header. Mend it, or leave it out."),
        _ => "",
    };

    /// <summary>What is odd without making the round void.</summary>
    /// <param name="round">The round.</param>
    /// <param name="book">The book it is in.</param>
    /// <returns>Sentences.</returns>
    public static IEnumerable<string> Remarks(BalanceRound round, BalanceBook book)
    {
        foreach (var twice in round.Readings.GroupBy(r => r.Barrel).Where(g => g.Count(r => r.Air is not null) > 1))
        {
            yield return Line($"Barrel {twice.Key} was read {twice.Count()} times ({string.Join(", ", twice.Select(r => r.Air))} kg/h); the last counts.");
        }

        var air = round.Readings.Where(r => r.Air is not null).ToList();
        var missing = book.Plan.Barrels.Select(b => b.Number).Except(air.Select(r => r.Barrel)).ToList();
        if (air.Count > book.Plan.Barrels.Count / 2 && missing.Count > 0)
        {
            yield return Line($"Barrel {string.Join(", ", missing)} was not read: read {(missing.Count == 1 ? "it" : "them")} before anything is judged.");
        }

        if (air.Count > 0 && air.TrueForAll(r => r.Rpm is null))
        {
            yield return "No engine speed was noted, so drift of speed is not corrected. Write the rpm with each reading.";
        }

        if (air.Count >= EnoughToBeOdd && air.TrueForAll(r => r.Air == air[0].Air))
        {
            yield return Line($"All {air.Count} read {air[0].Air} kg/h to the digit. Does the meter move? Blip, let it settle and read two again.");
        }

        foreach (var remark in Sizes(round, book, air))
        {
            yield return remark;
        }
    }

    private static IEnumerable<string> Sizes(BalanceRound round, BalanceBook book, List<BarrelReading> air)
    {
        if (round.HeldRpm is { } held && round.Readings.FirstOrDefault(r => Math.Abs((r.Rpm ?? held) - held) > SpeedOff * held) is { } other)
        {
            yield return Line($"Barrel {other.Barrel} was read at {other.Rpm} rpm in a round held at {held}. Another speed, or a slip of the pen?");
        }

        if (round.IsIdle && round.Readings.Average(r => r.Vacuum) is { } vacuum and > 0 and < LittleVacuum)
        {
            yield return Line($"A mean vacuum of {vacuum:0.#} kPa is little at idle, usually 45 to 65. Was it read in inHg? {vacuum:0.#} inHg is {vacuum * InchOfMercury:0} kPa.");
        }

        foreach (var remark in round.IsIdle && air.Count > 1 ? Idle(book, air) : [])
        {
            yield return remark;
        }
    }

    private static IEnumerable<string> Idle(BalanceBook book, List<BarrelReading> air)
    {
        var (low, high) = PlausibleIdle(book.Plan, air.Average(r => r.Rpm) ?? book.Plan.IdleRpm);
        var mean = air.Average(r => r.Air!.Value);
        if (mean > Beyond * high || mean < low / Beyond)
        {
            yield return Line($"A mean of {mean:0.0} kg/h is far from the {low:0.0} to {high:0.0} that this engine's swept volume asks at idle. Another unit, or readings of another engine?{Pounds(mean, low, high)}");
        }
        else if (mean > 1.5 * high)
        {
            yield return Line($"All pass much ({mean:0.0} kg/h, usually {low:0.0} to {high:0.0}): late ignition, weak combustion, drag, or the meter's adaptor.{Pounds(mean, low, high)}");
        }
        else if (mean < low / 1.5)
        {
            yield return Line($"All pass little ({mean:0.0} kg/h, usually {low:0.0} to {high:0.0}): air that the meter does not see, or early ignition.");
        }

        var median = air.Select(r => r.Air!.Value).Order().ElementAt(air.Count / 2);
        foreach (var slip in air.Where(r => r.Air > Doubled * median || r.Air < median / Doubled))
        {
            yield return Line($"Barrel {slip.Barrel} reads {slip.Air} kg/h where the others lie about {median:0.0}: digits changed round? Read it again.");
        }
    }

    // said where the readings would be ordinary as pounds
    private static string Pounds(double mean, double low, double high) => mean * PoundInKilograms is var kilograms && kilograms > low / 1.5 && kilograms < 1.5 * high
        ? Line($" Was it read in lb/h? {mean:0.0} lb/h is {kilograms:0.0} kg/h.")
        : "";

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
