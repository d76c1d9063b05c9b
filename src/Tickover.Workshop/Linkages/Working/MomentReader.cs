using Tickover.Physics.Linkages;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>What is to be read off a linkage at a position of the pedal.</summary>
internal sealed class MomentReader
{
    private readonly LinkageMotion _motion;
    private readonly LinkageLimits _limits;
    private readonly int[] _carburettors;
    private readonly PlateAreas[] _areas;

    public MomentReader(LinkageMotion motion, LinkageLimits limits)
    {
        (_motion, _limits) = (motion, limits);
        _carburettors = [.. motion.Linkage.Carburettors];
        _areas = [.. _carburettors.Select(c => new PlateAreas(motion.Linkage.Shafts[c]))];
    }

    public LinkageMoment At(double down)
    {
        var pedal = _motion.PedalAt(down);
        var pose = _motion.Pose(pedal);
        var loads = new SpringLoads(_motion.Train, pose);
        var plates = _carburettors.Select(c => Plates(c, pose, loads)).ToArray();
        var areas = plates.Select((p, i) => _areas[i].At(p.Degrees)).ToArray();
        var (meanDegrees, meanArea) = (plates.Average(p => p.Degrees), areas.Average());
        var wander = Wander(pose);
        var (limit, perDegree) = (Limit(meanArea), _areas.Average(a => a.PartPerDegree(meanDegrees)));
        return new LinkageMoment
        {
            Down = down,
            PedalDegrees = pedal,
            LimitPart = limit,
            LimitDegrees = perDegree > 0 ? limit / perDegree : double.PositiveInfinity,
            Plates =
            [
                .. plates.Select((p, i) => new PlateMoment
                {
                    Degrees = p.Degrees,
                    WindUpDegrees = p.WindUp,
                    AreaSquareMillimetres = areas[i],
                    DeviationDegrees = p.Degrees - meanDegrees,
                    DeviationPart = meanArea > 0 ? areas[i] / meanArea - 1 : 0,
                    PlayDegrees = wander[i],
                    PlayPart = wander[i] * _areas[i].PartPerDegree(p.Degrees),
                }),
            ],
        };
    }

    private double Limit(double meanArea) =>
        meanArea < LinkageLimits.OffIdleFrom * _areas.Average(a => a.Idle) ? _limits.IdlePart : _limits.OffIdlePart;

    private (double Degrees, double WindUp) Plates(int shaft, TrainPose pose, SpringLoads loads)
    {
        var throttle = _motion.Linkage.Shafts[shaft].Throttle!;
        var rigid = throttle.IdleDegrees + (int)throttle.Opens * double.RadiansToDegrees(pose.Turned[shaft]);
        var lags = throttle.PlatesAlongMillimetres.Select(along => -(int)throttle.Opens * double.RadiansToDegrees(loads.Lag(shaft, along / 1000))).ToArray();

        // On its stop a spindle is held by the stop, and nothing winds it up.
        var held = rigid <= throttle.IdleDegrees;
        return (Math.Max(throttle.IdleDegrees, rigid - lags.Average()), held ? 0 : Math.Min(lags.Max(), rigid - throttle.IdleDegrees));
    }

    // Each rod's play moves the plates it turns; what moves all alike is no mismatch.
    private double[] Wander(TrainPose pose)
    {
        var sums = new double[_carburettors.Length];
        for (var m = 0; m < _motion.Linkage.Links.Count; m++)
        {
            if (_motion.Linkage.Links[m] is not RodPart rod)
            {
                continue;
            }

            var moved = pose.Sensitivity(_motion.Train, m);
            var degrees = _carburettors.Select(c => (int)_motion.Linkage.Shafts[c].Throttle!.Opens * double.RadiansToDegrees(moved[c]) * rod.PlayMillimetres / 1000).ToArray();
            var mean = degrees.Average();
            for (var i = 0; i < sums.Length; i++)
            {
                sums[i] += Math.Abs(degrees[i] - mean);
            }
        }

        return sums;
    }
}
