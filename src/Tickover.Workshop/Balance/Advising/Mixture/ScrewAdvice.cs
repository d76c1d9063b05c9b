using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>What one method says of a mixture screw.</summary>
/// <param name="Read">Whether its barrel is to be read.</param>
/// <param name="Turns">Turns to make, positive richer; zero for none.</param>
/// <param name="Why">Why, in a sentence or two.</param>
/// <param name="Remark">What is odd about it; empty where nothing is.</param>
internal sealed record ScrewAdvice(bool Read, double Turns, string Why, string Remark = "")
{
    /// <summary>Nothing more to do.</summary>
    public static ScrewAdvice Done { get; } = new(Read: false, 0, "");

    /// <summary>A turn to the nearest step a person makes, within the screw's travel.</summary>
    /// <param name="screw">The screw.</param>
    /// <param name="turns">Turns wanted.</param>
    /// <returns>Turns in whole steps.</returns>
    public static double InSteps(Adjuster screw, double turns) =>
        Math.Round(Math.Clamp(turns, -screw.TravelTurns, screw.TravelTurns) * screw.StepsATurn) / screw.StepsATurn;
}
