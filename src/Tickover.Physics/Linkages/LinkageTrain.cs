namespace Tickover.Physics.Linkages;

/// <summary>Members one after another from the pedal's shaft to the throttle spindles. docs/physics/linkages.md (12), (13).</summary>
/// <remarks>Rigid. What shafts wind up is added by <see cref="SpringLoads"/>.</remarks>
public sealed class LinkageTrain
{
    private readonly BallRod?[] _rods;
    private readonly RodAssembly[] _assemblies;

    /// <summary>Puts a linkage together as it lies at rest.</summary>
    /// <param name="shafts">Its shafts; number 0 is the pedal's.</param>
    /// <param name="members">What drives what, each driving shaft before the shafts it drives; every shaft but 0 driven once.</param>
    /// <exception cref="ArgumentException">A member drives from a shaft that nothing has driven yet, or one that is driven already.</exception>
    public LinkageTrain(IReadOnlyList<LinkageShaft> shafts, IReadOnlyList<LinkageMember> members)
    {
        ArgumentNullException.ThrowIfNull(shafts);
        ArgumentNullException.ThrowIfNull(members);
        CheckOrder(shafts.Count, members);
        (Shafts, Members) = (shafts, members);
        _rods = [.. members.Select(m => m is RodMember rod ? Rod(rod) : null)];
        _assemblies = [.. _rods.Select(AtRest)];
    }

    /// <summary>The shafts.</summary>
    public IReadOnlyList<LinkageShaft> Shafts { get; }

    /// <summary>What drives what.</summary>
    public IReadOnlyList<LinkageMember> Members { get; }

    /// <summary>How far off a rod is from going on at all with its driving shaft turned so far.</summary>
    /// <param name="member">Number of the member, from 0.</param>
    /// <param name="driverRadians">How far its driving shaft has turned, radians.</param>
    /// <returns>m, positive: too long; zero where it goes on, and for a coupling.</returns>
    public double Misfit(int member, double driverRadians) => _rods[member]?.Misfit(driverRadians) ?? 0;

    /// <summary>How it stands.</summary>
    /// <param name="pedalRadians">How far the pedal's shaft has turned from rest, radians, right-handed.</param>
    /// <returns>The turn of each shaft.</returns>
    public TrainPose Pose(double pedalRadians)
    {
        Precondition.Finite(pedalRadians);
        var turned = Enumerable.Repeat(double.NaN, Shafts.Count).ToArray();
        turned[0] = pedalRadians;
        var members = new MemberPose[Members.Count];
        int? locked = null;
        for (var m = 0; m < Members.Count; m++)
        {
            if (double.IsNaN(turned[Members[m].From]) || Place(m, turned) is not { } pose)
            {
                members[m] = new MemberPose(double.NaN, double.NaN, double.NaN, double.NaN);
                locked ??= m;
                continue;
            }

            members[m] = pose;
        }

        return new TrainPose { Turned = turned, Members = members, Locked = locked };
    }

    private static void CheckOrder(int shafts, IReadOnlyList<LinkageMember> members)
    {
        var driven = new HashSet<int> { 0 };
        foreach (var member in members)
        {
            if (!driven.Contains(member.From) || member.To >= shafts || !driven.Add(member.To))
            {
                throw new ArgumentException($"shaft {member.To} is driven from {member.From} out of order or twice", nameof(members));
            }
        }
    }

    // Of the two ways a rod goes on, the one that leaves the driven shaft nearest to where it was drawn.
    private static RodAssembly AtRest(BallRod? rod) =>
        rod?.At(0) is { } both && Math.Abs(both.Second) < Math.Abs(both.First) ? RodAssembly.Second : RodAssembly.First;

    private MemberPose? Place(int m, double[] turned)
    {
        var member = Members[m];
        if (member is CouplingMember coupling)
        {
            // Spindles in line may still run opposite ways on paper.
            var hand = Shafts[member.From].Line.Direction.Dot(Shafts[member.To].Line.Direction) < 0 ? -1 : 1;
            turned[member.To] = hand * turned[member.From] + coupling.OffsetRadians; // linkages (13)
            return new MemberPose(hand, 1, 1, 1);
        }

        var rod = _rods[m]!;
        if (rod.At(turned[member.From], _assemblies[m]) is not { } angle)
        {
            return null;
        }

        turned[member.To] = angle;
        var rates = rod.Rates(turned[member.From], angle);
        return new MemberPose(rates.DrivenPerDriver, rates.DrivenPerMetre, rates.DriverSine, rates.DrivenSine);
    }

    private BallRod Rod(RodMember rod) => new()
    {
        Driver = Shafts[rod.From].Line,
        DriverLever = rod.FromLever,
        Driven = Shafts[rod.To].Line,
        DrivenLever = rod.ToLever,
        LengthMetres = rod.LengthMetres,
    };
}
