namespace Tickover.Physics.Breathing;

/// <summary>What the integrator needs of a group of barrels and cylinders besides the operating point.</summary>
internal sealed class GroupSetting
{
    internal required EngineSpec Engine { get; init; }

    internal required CycleTables Tables { get; init; }

    /// <summary>Shift of each cylinder of the group against the first, in steps.</summary>
    internal required int[] Shifts { get; init; }

    /// <summary>Indices of the group's barrels in the engine.</summary>
    internal required int[] Barrels { get; init; }

    /// <summary>Volume shared by the barrels, m³; zero for one barrel on one cylinder.</summary>
    internal required double SharedVolume { get; init; }

    /// <summary>Index of the crank at which the first cylinder's cycle starts: past inlet closing.</summary>
    internal required int StartIndex { get; init; }

    internal int Cylinders => Shifts.Length;

    internal bool Shared => SharedVolume > 0;

    internal static GroupSetting For(EngineSpec engine, IntakeGroup group, CycleTables tables)
    {
        const double pastClosing = 20;
        var first = engine.FiringDegrees[group.Cylinders[0]];
        return new GroupSetting
        {
            Engine = engine,
            Tables = tables,
            Barrels = [.. group.Barrels],
            SharedVolume = group.SharedVolumeCubicMetres,
            Shifts = [.. group.Cylinders.Select(c => (int)Math.Round((engine.FiringDegrees[c] - first) / tables.StepDegrees))],
            StartIndex = (int)Math.Round((engine.IntakeValve.ClosesDegrees + pastClosing) / tables.StepDegrees) % tables.Steps,
        };
    }
}
