using Tickover.Physics.Metering;

namespace Tickover.Workshop.Calibration;

/// <summary>Values of the unknowns, put on a barrel's physics.</summary>
internal readonly struct CircuitTrims(IReadOnlyList<double> values)
{
    /// <summary>Which of the unknowns is the zero of the throttle reading.</summary>
    internal const int PlateZero = 8;

    private const double Millimetre = 1e-3;

    /// <summary>What the depression in the auxiliary venturi is multiplied by: the gain's own, and the square of the flow's.</summary>
    internal double Depression => Math.Exp(values[0] + 2 * values[7]);

    /// <summary>What the air is multiplied by.</summary>
    internal double Air => Math.Exp(values[7]);

    /// <summary>What is added to an opening read, degrees.</summary>
    internal double PlateZeroDegrees => values[PlateZero];

    /// <summary>The logarithm added to λ on a bank, from 1; zero where all are seen at once.</summary>
    internal double Bank(int? bank)
    {
        var first = CalibrationUnknowns.OfTheCar.Count;
        return bank is not { } b || values.Count <= first ? 0
            : first + b - 1 < values.Count ? values[first + b - 1]
            : -values.Skip(first).Sum();
    }

    /// <summary>The barrel as the calibration has it. A jet's bore stands for its area times its coefficient, which are one to the flow.</summary>
    internal BarrelSpec On(BarrelSpec barrel)
    {
        var lower = values[6] * Millimetre;
        return barrel with
        {
            Float = barrel.Float with { LipHeightMetres = barrel.Float.LipHeightMetres + lower },
            Main = barrel.Main with
            {
                JetDiameterMetres = barrel.Main.JetDiameterMetres * Math.Exp(values[1] / 2),
                AirDischargeCoefficient = barrel.Main.AirDischargeCoefficient * Math.Exp(values[3]),
                Slip = barrel.Main.Slip * Math.Exp(values[4]),
                NozzleDischargeCoefficient = barrel.Main.NozzleDischargeCoefficient * Math.Exp(values[5]),
            },
            Idle = barrel.Idle with
            {
                JetDiameterMetres = barrel.Idle.JetDiameterMetres * Math.Exp(values[2] / 2),
                AirDischargeCoefficient = barrel.Idle.AirDischargeCoefficient * Math.Exp(values[9]),
                LiftMetres = barrel.Idle.LiftMetres + lower,
            },
        };
    }
}
