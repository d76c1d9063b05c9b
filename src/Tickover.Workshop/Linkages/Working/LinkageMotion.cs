using Tickover.Physics.Linkages;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>A linkage being moved: where the pedal rests, where it ends, and the angle of every plate between.</summary>
internal sealed class LinkageMotion
{
    private const int ScanSteps = 120;
    private const int Halvings = 40;

    private readonly int[] _carburettors;

    public LinkageMotion(Linkage linkage)
    {
        Linkage = linkage;
        Train = LinkageTrains.Of(linkage);
        _carburettors = [.. linkage.Carburettors];
        RestDegrees = Rest();
        (EndDegrees, End, EndsAt) = Ending();
    }

    public Linkage Linkage { get; }

    public LinkageTrain Train { get; }

    /// <summary>Where the pedal's shaft comes to rest: up, or before that where a plate meets its stop.</summary>
    public double RestDegrees { get; }

    /// <summary>Where it ends.</summary>
    public double EndDegrees { get; }

    /// <summary>What ends it.</summary>
    public TravelEnd End { get; }

    /// <summary>Number of the carburettor or of the link that ends it; null for the floor.</summary>
    public int? EndsAt { get; }

    /// <summary>How the rigid linkage stands.</summary>
    public TrainPose Pose(double pedalDegrees) => Train.Pose((int)Linkage.PedalTurns * double.DegreesToRadians(pedalDegrees));

    /// <summary>Where the pedal's shaft stands with the pedal so far down.</summary>
    public double PedalAt(double down) => Math.Max(RestDegrees, Math.Min(EndDegrees, down * Linkage.PedalTravelDegrees));

    /// <summary>Angles of the plates of the rigid linkage, degrees from square to the bore; not a number beyond a dead point.</summary>
    public double[] Angles(double pedalDegrees)
    {
        var pose = Pose(pedalDegrees);
        return [.. _carburettors.Select(c => Angle(c, pose.Turned[c]))];
    }

    private double Angle(int shaft, double turned)
    {
        var throttle = Linkage.Shafts[shaft].Throttle!;
        return throttle.IdleDegrees + (int)throttle.Opens * double.RadiansToDegrees(turned);
    }

    // The springs pull the pedal back until the first plate meets its stop; a rod that fits badly holds the others off theirs.
    private double Rest()
    {
        bool AllOff(double pedal) => Angles(pedal).Select((a, i) => a - Idle(i)).All(off => !(off < 0));
        if (AllOff(0))
        {
            return 0;
        }

        var step = Linkage.PedalTravelDegrees / ScanSteps;
        var first = Enumerable.Range(1, ScanSteps).Select(i => i * step).Where(AllOff).Select(p => (double?)p).FirstOrDefault();
        return first is { } found ? Between(found - step, found, p => !AllOff(p)) : Linkage.PedalTravelDegrees;
    }

    private (double Degrees, TravelEnd End, int? At) Ending()
    {
        var step = Linkage.PedalTravelDegrees / ScanSteps;
        var before = RestDegrees;
        for (var i = 1; i <= ScanSteps; i++)
        {
            var pedal = i * step;
            if (pedal <= RestDegrees)
            {
                continue;
            }

            if (Pose(pedal).Locked is { } locked)
            {
                return (Between(before, pedal, p => Pose(p).Locked is null), TravelEnd.DeadPoint, locked);
            }

            if (FirstFull(pedal) is { } full)
            {
                return (Between(before, pedal, p => FirstFull(p) is null), TravelEnd.FullStop, full);
            }

            before = pedal;
        }

        return (Linkage.PedalTravelDegrees, TravelEnd.Floor, null);
    }

    private int? FirstFull(double pedal) =>
        Angles(pedal).Select((a, i) => (a, i)).Where(x => x.a >= Full(x.i)).Select(x => (int?)x.i).FirstOrDefault();

    private double Idle(int carburettor) => Linkage.Shafts[_carburettors[carburettor]].Throttle!.IdleDegrees;

    private double Full(int carburettor) => Linkage.Shafts[_carburettors[carburettor]].Throttle!.FullDegrees;

    // The last place, to the last digits, where something still holds that no longer holds at the other end.
    private static double Between(double holds, double holdsNot, Func<double, bool> does)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (holds + holdsNot) / 2;
            (holds, holdsNot) = does(middle) ? (middle, holdsNot) : (holds, middle);
        }

        return does(holds) ? holds : holdsNot;
    }
}
