namespace Tickover.Physics.Gauges;

/// <summary>One explanation of the readings: families, a fault and how much of it.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Sender">Family of the sender.</param>
/// <param name="Gauge">Family of the gauge.</param>
/// <param name="Amount">Ω added, part of the travel, place of the needle or part of the voltage, as the fault has it; 0 where it has none.</param>
/// <param name="InWire">Whether the fault lies between sender and gauge, so that ohms read at the sender do not show it.</param>
public sealed record SenderCase(SenderFault Fault, SenderFamily Sender, SenderFamily Gauge, double Amount = 0, bool InWire = false)
{
    private const double HardlyAny = 0.3; // Ω of a good short

    /// <summary>Resistance read at the sender.</summary>
    /// <param name="travel">Part of the way the float should have gone.</param>
    /// <returns>Ω; infinite for open.</returns>
    public double OhmsAt(double travel) => InWire ? Own(travel) : Changed(Own(travel));

    /// <summary>Where the needle settles.</summary>
    /// <param name="travel">Part of the way the float should have gone.</param>
    /// <returns>0 at E, 1 at F.</returns>
    public double NeedleAt(double travel)
    {
        if (Fault == SenderFault.StuckNeedle)
        {
            return Amount;
        }

        var voltage = Fault is SenderFault.VoltageLow or SenderFault.VoltageHigh ? Amount : 1;
        var needle = new GaugeLaw { Family = Gauge, VoltagePart = voltage }.NeedleAt(Changed(Own(travel)));
        return Gauge.Thermal ? needle : needle * voltage;
    }

    private double Own(double travel) => Sender.OhmsAt(Fault switch
    {
        SenderFault.StuckFloat => Amount,
        SenderFault.FouledHigh => Math.Min(travel, Amount),
        SenderFault.FouledLow => Math.Max(travel, Amount),
        SenderFault.ReversedFloat => 1 - travel,
        _ => travel,
    });

    private double Changed(double ohms) => Fault switch
    {
        SenderFault.Open => double.PositiveInfinity,
        SenderFault.Short => HardlyAny,
        SenderFault.AddedResistance => ohms + Amount,
        SenderFault.SecondInParallel => ohms / 2,
        SenderFault.SecondInSeries => ohms * 2,
        _ => ohms,
    };
}
