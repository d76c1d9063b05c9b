namespace Tickover.Physics.Linkages;

/// <summary>What the return springs ask of a linkage at one position, and how far its shafts wind up under them. docs/physics/linkages.md (15), (17), (18).</summary>
/// <remarks>First order: torques are those of the rigid linkage, twists are added up along it. A twist of a degree alters the torques by a few per cent.</remarks>
public sealed class SpringLoads
{
    private readonly LinkageTrain _train;
    private readonly TrainPose _pose;
    private readonly double[] _torques;
    private readonly double[] _lags;

    /// <summary>Works them out.</summary>
    /// <param name="train">The linkage.</param>
    /// <param name="pose">How it stands; every member reaching.</param>
    public SpringLoads(LinkageTrain train, TrainPose pose)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentNullException.ThrowIfNull(pose);
        (_train, _pose) = (train, pose);
        _torques = Torques();
        _lags = Lags();
    }

    /// <summary>Torque that has to be put into a shaft where it is driven.</summary>
    /// <param name="shaft">Number of the shaft.</param>
    /// <returns>N m, right-handed about the shaft; number 0 is what the pedal has to give.</returns>
    public double Torque(int shaft) => _torques[shaft];

    /// <summary>How far a place of a shaft stands from where the rigid linkage would have it.</summary>
    /// <param name="shaft">Number of the shaft.</param>
    /// <param name="alongMetres">Where along it, m.</param>
    /// <returns>Radians, right-handed: what the shaft is late, and its own twist out to the place.</returns>
    public double Lag(int shaft, double alongMetres) => _lags[shaft] - Twist(shaft, alongMetres);

    // Backwards, from the spindles to the pedal: virtual work hands a torque on by the rate.
    private double[] Torques()
    {
        var torques = _train.Shafts.Select((s, i) => SpringTorque(s, _pose.Turned[i])).ToArray();
        for (var m = _train.Members.Count - 1; m >= 0; m--)
        {
            torques[_train.Members[m].From] += Handed(m, torques); // linkages (17)
        }

        return torques;
    }

    private double[] Lags()
    {
        var lags = new double[_train.Shafts.Count];
        for (var m = 0; m < _train.Members.Count; m++)
        {
            var member = _train.Members[m];
            lags[member.To] = _pose.Members[m].Rate * (lags[member.From] - Twist(member.From, member.FromAlongMetres));
        }

        return lags;
    }

    // Twist between where the shaft is driven and a place, by every torque taken off it: each winds the length it shares with the way there.
    private double Twist(int shaft, double along)
    {
        var whole = _train.Shafts[shaft];
        var start = Start(shaft);
        var sum = 0.0;
        foreach (var (at, torque) in Loads(shaft))
        {
            var (way, load) = (along - start, at - start);
            sum += way * load > 0 ? torque * Math.Min(Math.Abs(way), Math.Abs(load)) : 0;
        }

        return sum * whole.Compliance; // linkages (18)
    }

    private List<(double At, double Torque)> Loads(int shaft)
    {
        var loads = new List<(double At, double Torque)>();
        if (_train.Shafts[shaft].Spring is { } spring)
        {
            loads.Add((spring.AlongMetres, SpringTorque(_train.Shafts[shaft], _pose.Turned[shaft])));
        }

        for (var m = 0; m < _train.Members.Count; m++)
        {
            if (_train.Members[m].From == shaft)
            {
                loads.Add((_train.Members[m].FromAlongMetres, Handed(m, _torques)));
            }
        }

        return loads;
    }

    private double Handed(int m, double[] torques) => _pose.Members[m].Rate * torques[_train.Members[m].To];

    private double Start(int shaft)
    {
        foreach (var member in _train.Members)
        {
            if (member.To == shaft)
            {
                return member.ToAlongMetres;
            }
        }

        // The pedal's own shaft is taken as driven where its first member leaves it.
        return _train.Members.FirstOrDefault(m => m.From == shaft)?.FromAlongMetres ?? 0;
    }

    private static double SpringTorque(LinkageShaft shaft, double turned) =>
        shaft.Spring is { } spring ? spring.Sense * spring.TorqueNewtonMetres + spring.RateNewtonMetresPerRadian * turned : 0;
}
