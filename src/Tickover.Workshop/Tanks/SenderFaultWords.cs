using Tickover.Physics.Gauges;

namespace Tickover.Workshop.Tanks;

/// <summary>Faults of sender and gauge in the workshop's words, with the test that tells them from others.</summary>
public static class SenderFaultWords
{
    /// <summary>The fault in a few words.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Words, as at the beginning of a sentence.</returns>
    public static string Name(SenderFault fault) => fault switch
    {
        SenderFault.None => "Nothing wrong",
        SenderFault.Open => "Sender or its wire open",
        SenderFault.Short => "Sender or its wire shorted",
        SenderFault.AddedResistance => "Poor earth or joint",
        SenderFault.WrongFamily => "Sender and gauge of different families",
        SenderFault.StuckFloat => "Float stuck or full of fuel",
        SenderFault.FouledHigh => "Float stops short of the top",
        SenderFault.FouledLow => "Float stops short of the bottom",
        SenderFault.ReversedFloat => "Float arm the wrong way round",
        SenderFault.VoltageLow => "Stabiliser gives too little",
        SenderFault.VoltageHigh => "Stabiliser gives too much",
        SenderFault.StuckNeedle => "Needle stuck",
        SenderFault.SecondInParallel => "A second sender in parallel",
        _ => "A second sender in series",
    };

    /// <summary>The test that settles it.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A sentence or two.</returns>
    public static string Test(SenderFault fault) => fault switch
    {
        SenderFault.None => "Fill in measured steps and keep the table.",
        SenderFault.Open => "Wire off at the sender: ohms across the sender, then through the wire. The one without end is open.",
        SenderFault.Short => "Wire off at the sender: if the needle falls back the sender is shorted, if it stays the wire is.",
        SenderFault.AddedResistance => "Volt drop from the tank to the battery's earth with the gauge on: above 0.1 V the earth is poor. Then known resistors at the sender's plug.",
        SenderFault.WrongFamily => "Put known resistors in place of the sender: the gauge shows the family it is made for.",
        SenderFault.StuckFloat => "Sender out, tank closed: move the arm and watch the ohms; shake the float and listen for fuel in it.",
        SenderFault.FouledHigh or SenderFault.FouledLow => "Ohms at both ends of the arm's way in the hand: right there and short in the tank, then something in the tank stops it.",
        SenderFault.ReversedFloat => "Sender out: the arm goes up, and the ohms must go the way the family says.",
        SenderFault.VoltageLow or SenderFault.VoltageHigh => "Mean volts at the gauge, engine off and on: some 10 V and the same both times, or look at the stabiliser and the earth of its case.",
        SenderFault.StuckNeedle => "Known resistors in place of the sender, a minute each: a needle that does not follow is stuck, or not fed.",
        _ => "Take one sender's wire off: the needle jumps. Find out by the wiring whether both belong there.",
    };
}
