using System.Globalization;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Fuel against dip, both ways; neither ever turns back.</summary>
public sealed class StrappingTable
{
    private const int StepsOfShape = 240;
    private readonly MonotoneCurve _volumes; // over the dip
    private readonly MonotoneCurve _dips;    // over the volume

    private StrappingTable(IReadOnlyList<StrappingStep> steps, MonotoneCurve volumes, MonotoneCurve dips) =>
        (Steps, _volumes, _dips) = (steps, volumes, dips);

    /// <summary>What the table was made of, from the emptiest.</summary>
    public IReadOnlyList<StrappingStep> Steps { get; }

    /// <summary>Most fuel in it, m³.</summary>
    public double LastVolumeCubicMetres => _dips.Last;

    /// <summary>The table of a shape.</summary>
    /// <param name="shape">The tank.</param>
    /// <param name="foot">Where the stick stands: the foot of its scale, m.</param>
    /// <param name="tilt">How the tank stands.</param>
    /// <returns>The table, from the dip at which the stick is first wetted; null where it never is.</returns>
    public static StrappingTable? Of(TankShape shape, SpaceVector foot, Tilt tilt = default)
    {
        ArgumentNullException.ThrowIfNull(shape);
        var tank = shape.At(tilt);
        var bottom = Math.Max(0, tilt.DepthOver(tank.Lowest, foot));
        var top = tilt.DepthOver(tank.Highest, foot);
        if (top <= bottom)
        {
            return null;
        }

        var steps = Enumerable.Range(0, StepsOfShape + 1)
            .Select(i => bottom + (top - bottom) * i / StepsOfShape)
            .Select(dip => new StrappingStep(tank.VolumeBelow(tilt.LevelAt(dip, foot)), dip))
            .ToArray();
        return Build([.. Distinct(steps)]);
    }

    /// <summary>The table a fill in measured steps gives.</summary>
    /// <param name="steps">What was read: fuel in, all of it, and the dip; in the order of the fill.</param>
    /// <returns>The table, or which step turns back.</returns>
    public static (StrappingTable? Table, string? Problem) FromFill(IReadOnlyList<StrappingStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        if (steps.Count < 2)
        {
            return (null, "A table needs two steps or more.");
        }

        for (var i = 0; i < steps.Count; i++)
        {
            var problem = Problem(steps, i);
            if (problem is not null)
            {
                return (null, string.Create(CultureInfo.InvariantCulture, $"Step {i + 1}: {problem}"));
            }
        }

        return (Build(steps), null);
    }

    /// <summary>Fuel at a dip.</summary>
    /// <param name="dip">m.</param>
    /// <returns>m³; beyond the table straight on, never below zero.</returns>
    public double VolumeAt(double dip) => Math.Max(0, _volumes.At(dip));

    /// <summary>Dip of so much fuel.</summary>
    /// <param name="volume">m³.</param>
    /// <returns>m; beyond the table straight on, never below zero.</returns>
    public double DipAt(double volume) => Math.Max(0, _dips.At(volume));

    private static StrappingTable? Build(IReadOnlyList<StrappingStep> steps)
    {
        var volumes = MonotoneCurve.Through(steps.Select(s => (s.DipMetres, s.VolumeCubicMetres)));
        var dips = MonotoneCurve.Through(steps.Select(s => (s.VolumeCubicMetres, s.DipMetres)));
        return volumes is null || dips is null ? null : new StrappingTable(steps, volumes, dips);
    }

    private static string? Problem(IReadOnlyList<StrappingStep> steps, int i)
    {
        var step = steps[i];
        if (!(double.IsFinite(step.VolumeCubicMetres) && double.IsFinite(step.DipMetres)) || step.VolumeCubicMetres < 0 || step.DipMetres < 0)
        {
            return "litres and dip are zero or more.";
        }

        if (i > 0 && step.VolumeCubicMetres <= steps[i - 1].VolumeCubicMetres)
        {
            return "there is no more fuel in than the step before. Give all that has gone in, step by step.";
        }

        return i > 0 && step.DipMetres <= steps[i - 1].DipMetres
            ? "the dip has not risen although fuel went in. Read the stick again, or look whether the fuel went to the other tank."
            : null;
    }

    // A level at which nothing more goes in, as in the filler's neck of a mesh, would turn the table back.
    private static IEnumerable<StrappingStep> Distinct(StrappingStep[] steps)
    {
        var last = double.NegativeInfinity;
        foreach (var step in steps.Where(s => s.VolumeCubicMetres > last))
        {
            last = step.VolumeCubicMetres;
            yield return step;
        }
    }
}
