using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Api;

/// <summary>The working at a point as programs see it.</summary>
/// <param name="Barrel">The barrel, from 1.</param>
/// <param name="SpeedRpm">Engine speed, rpm.</param>
/// <param name="ThrottleDegrees">Opening from seated, degrees.</param>
/// <param name="Point">The point.</param>
/// <param name="RelativeBand">Half width of the band as a part of the ratio.</param>
/// <param name="Target">The target λ here.</param>
/// <param name="Steps">The steps from the air to λ.</param>
public sealed record ExplainAnswer(
    int Barrel, double SpeedRpm, double ThrottleDegrees, PointAnswer Point, double RelativeBand, LambdaBand Target, IReadOnlyList<StepAnswer> Steps)
{
    /// <summary>Says it of a working.</summary>
    /// <param name="working">The working.</param>
    /// <returns>The answer.</returns>
    public static ExplainAnswer Of(PointWorking working)
    {
        ArgumentNullException.ThrowIfNull(working);
        return new ExplainAnswer(
            working.BarrelNumber,
            working.SpeedRpm,
            working.ThrottleDegrees,
            PointAnswer.Of(working.Point),
            working.RelativeBand,
            working.Target,
            [.. working.Steps.Select(s => new StepAnswer(
                s.Title, s.Formula, s.NumbersIn, s.Answer, s.Equation, s.Note, [.. s.Inputs.Select(i => $"{i.Definition.Label} {FigureText.Show(i)}: {i.Origin.Note}")]))]);
    }
}
