namespace Tickover.Bench.Peer;

/// <summary>How finely the C program solves.</summary>
/// <param name="Cycle">Change over a cycle at which a point counts as periodic, 1.</param>
/// <param name="Level">Balance of the level in the emulsion tube, m.</param>
/// <param name="Flow">Change of the metering's flows over a cycle, 1.</param>
/// <param name="Relative">CVODE's relative tolerance of the gas exchange.</param>
/// <param name="FuelRelative">CVODE's relative tolerance of the fuel column.</param>
internal sealed record PeerTolerances(double Cycle, double Level, double Flow, double Relative, double FuelRelative)
{
    /// <summary>The periodicity that the product's solver asks for; CVODE as loose as marching to it allows.</summary>
    internal static readonly PeerTolerances Same = new(2e-5, 2e-5, 1e-4, 1e-6, 1e-5);

    /// <summary>The periodicity that the product's solver still accepts; looser than this cycles no longer repeat within it.</summary>
    internal static readonly PeerTolerances Loose = new(1e-4, 2e-5, 1e-4, 1e-5, 1e-5);

    /// <summary>What both are judged by.</summary>
    internal static readonly PeerTolerances Tight = new(1e-6, 1e-6, 1e-5, 1e-9, 1e-8);
}
