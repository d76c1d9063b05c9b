namespace Tickover.Physics.Sending;

/// <summary>A gauge's circuit with all that does not change worked out, for the inner loop.</summary>
internal readonly struct RestingNeedle(bool power, double volts, double gauge, double series, WireFault fault, double empty, double scale)
{
    internal double NeedleAt(double senderOhms)
    {
        var seen = fault is WireFault.None ? senderOhms + series : fault is WireFault.Open ? GaugeCircuit.OpenOhms : 0;
        var pull = volts / (gauge + seen); // sending (17)
        pull = power ? pull * pull : pull;
        return Math.Clamp((pull - empty) * scale, -GaugeCircuit.PegScale, 1 + GaugeCircuit.PegScale); // sending (18)
    }
}
