namespace Tickover.Physics.Linkages;

/// <summary>How a whole linkage stands at one position of the pedal.</summary>
public sealed record TrainPose
{
    /// <summary>How far each shaft has turned where it is driven, radians; not a number beyond a rod that does not reach.</summary>
    public required IReadOnlyList<double> Turned { get; init; }

    /// <summary>How each member stands.</summary>
    public required IReadOnlyList<MemberPose> Members { get; init; }

    /// <summary>The first member that does not reach; null where all do.</summary>
    public int? Locked { get; init; }

    /// <summary>How far a change of one member's setting turns each shaft.</summary>
    /// <param name="train">The linkage.</param>
    /// <param name="member">Number of the member, from 0.</param>
    /// <returns>For each shaft: radians per metre of rod, or 1 for a coupling's offset; zero where the member is not on the way.</returns>
    public IReadOnlyList<double> Sensitivity(LinkageTrain train, int member)
    {
        ArgumentNullException.ThrowIfNull(train);
        var moved = new double[Turned.Count];
        moved[train.Members[member].To] = Members[member].PerSetting;
        for (var m = member + 1; m < Members.Count; m++)
        {
            var (from, to) = (train.Members[m].From, train.Members[m].To);
            moved[to] += Members[m].Rate * moved[from]; // linkages (12)
        }

        return moved;
    }
}
