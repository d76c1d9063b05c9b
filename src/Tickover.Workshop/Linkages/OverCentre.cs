namespace Tickover.Workshop.Linkages;

/// <summary>A rod that comes into line with a lever, or near it.</summary>
/// <param name="Rod">Name of the rod.</param>
/// <param name="Lever">Name of the lever.</param>
/// <param name="Kind">How.</param>
/// <param name="Down">How far down the pedal is there, 0 to 1.</param>
/// <param name="DegreesOff">Angle between rod and lever there, degrees.</param>
public sealed record OverCentre(string Rod, string Lever, OverCentreKind Kind, double Down, double DegreesOff)
{
    /// <summary>Nearer to the line than this a lever has lost most of its pull: a third of it is left.</summary>
    /// <remarks>Our choice. Textbooks of mechanisms ask for 40° at the driven lever of a machine that runs all day (from memory).</remarks>
    public const double NearDegrees = 20;
}
