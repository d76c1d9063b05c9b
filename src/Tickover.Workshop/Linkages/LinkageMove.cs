namespace Tickover.Workshop.Linkages;

/// <summary>One thing to set otherwise.</summary>
/// <param name="Adjuster">What.</param>
/// <param name="More">By how much: mm for a rod, else degrees; a whole number of its steps.</param>
public sealed record LinkageMove(LinkageAdjuster Adjuster, double More)
{
    /// <summary>Turns of the thread, positive longer or further open; zero for a clamp.</summary>
    public double Turns => Adjuster.TurnsPerStep * Math.Round(More / Adjuster.Step);

    /// <summary>Where it stands afterwards.</summary>
    public double Value => Adjuster.Value + More;
}
