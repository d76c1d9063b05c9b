using System.Globalization;
using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>Gas method, where λ can be read of each cylinder: to the middle of the trade's band, what a turn is worth learned from each before and after.</summary>
internal static class ByGas
{
    private const double Middle = 0.92;                     // hot idle, mild cams: 0.88 to 0.95 (reference, 3.3, common practice)
    private const double ConstantDepression = 0.93;         // 0.90 to 0.96
    private const double Near = 0.03;                       // half the band
    private const double ScrewATurn = -0.10;                // λ a turn richer (assumed, learned)
    private const double NutATurn = -0.24;                  // λ a turn, six flats (assumed, learned)
    private const double Unsure = 0.5;                      // of it
    private const double AtFirst = 0.5;                     // turns: no further before it has shown what it does
    private const double Nothing = 0.3;                     // of what was expected

    /// <summary>What to do with a screw.</summary>
    /// <param name="task">The screw, or those of a bank.</param>
    /// <param name="history">What was turned and read of it.</param>
    /// <param name="deviation">Standard deviation of a reading of λ.</param>
    /// <returns>The advice.</returns>
    public static ScrewAdvice Of(GasTask task, ScrewHistory history, double deviation)
    {
        if (!history.IsRead)
        {
            return new(Read: true, 0, task.HowToRead);
        }

        var screw = task.Screw;
        var nominal = screw.Kind == AdjusterKind.JetNut ? NutATurn : ScrewATurn;
        var row = Learn(history, nominal, deviation);
        var aim = screw.Kind == AdjusterKind.JetNut ? ConstantDepression : Middle;
        var off = row.Level - aim;
        if (Math.Abs(off) <= Near)
        {
            return ScrewAdvice.Done;
        }

        if (history.Turns > 1 && row.Gain(0) > Nothing * nominal)
        {
            return ScrewAdvice.Done with { Remark = Line($"{task.Where}: λ stays at {row.Level:0.00} whatever it is turned. Idle is fed from elsewhere, or its drilling is blocked; look before it is turned further.") };
        }

        var most = history.Turns == 0 ? AtFirst : screw.TravelTurns;
        var turns = ScrewAdvice.InSteps(screw, Math.Clamp(-off / Math.Min(row.Gain(0), Nothing * nominal), -most, most));
        return turns == 0
            ? ScrewAdvice.Done
            : new(Read: false, turns, Line($"λ {row.Level:0.00}, wanted {aim - Near:0.00} to {aim + Near:0.00}. Expect {Expected(row, turns, deviation)}."));
    }

    private static InfluenceRow Learn(ScrewHistory history, double nominal, double deviation)
    {
        var row = new InfluenceRow(history.Readings[0].Value, 1, [nominal], [Unsure * nominal * Unsure * nominal]);
        var at = history.Readings[0].Position;
        foreach (var (position, value) in history.Readings)
        {
            if (position != at)
            {
                row.Turn(0, position - at);
            }

            row.Read(value, deviation * deviation);
            at = position;
        }

        return row;
    }

    private static string Expected(InfluenceRow row, double turns, double deviation)
    {
        var (level, variance) = row.Expect([(0, turns)]);
        return Line($"{level:0.00} ±{1.645 * Math.Sqrt(variance + (deviation * deviation)):0.00}");
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
