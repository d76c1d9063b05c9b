namespace Tickover.Workshop.Linkages;

/// <summary>How far one carburettor opens.</summary>
/// <param name="Degrees">Angle at the end of the pedal's travel, degrees.</param>
/// <param name="ShortByDegrees">What is wanting to its full angle, degrees; zero where it gets there.</param>
public sealed record ReachLine(double Degrees, double ShortByDegrees)
{
    /// <summary>Wanting less than this is not worth a word, degrees.</summary>
    public const double Negligible = 0.5;
}
