using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks.Working;

/// <summary>Where the fuel of a set of tanks is, level and otherwise.</summary>
internal sealed class TankFuel
{
    private readonly TankAtTilt _all;
    private readonly TankAtTilt[] _each;

    public TankFuel(TankSet set)
    {
        Set = set;
        _all = (set.Joined ?? throw new ArgumentException("There are no tanks.", nameof(set))).At(Tilt.Level);
        _each = [.. set.Tanks.Select(t => t.Shape.At(Tilt.Level))];
    }

    public TankSet Set { get; }

    /// <summary>Level of so much fuel in all tanks, the car level, m.</summary>
    public double Level(double cubicMetres) => _all.Filled(cubicMetres);

    public double VolumeOf(int tank, double level) => _each[tank].VolumeBelow(level);

    /// <summary>Dip of a tank at a level, mm; a dry stick reads nothing.</summary>
    public double Dip(int tank, double level) => TankUnits.Millimetres(Math.Max(0, level - Set.Tanks[tank].Foot.Z));

    /// <summary>Depth at the sender's float when so much fuel is in and the car stands so, m.</summary>
    public double SenderDepth(double cubicMetres, TankStance? stance)
    {
        var sender = Set.Sender;
        var (tank, place) = (sender?.Tank ?? 0, sender?.Place ?? Set.Tanks[sender?.Tank ?? 0].Foot);
        return stance is null
            ? Math.Max(0, Level(cubicMetres) - place.Z)
            : Math.Max(0, stance.Tilt.DepthOver(LevelIn(tank, cubicMetres, stance), place));
    }

    /// <summary>Fuel in all tanks when no pick-up reaches any more, m³; null without a pick-up.</summary>
    public double? Unusable(TankStance stance)
    {
        if (!Set.Tanks.Any(t => t.PickUp is not null))
        {
            return null;
        }

        if (!stance.IsPassing)
        {
            return Standing(stance.Tilt);
        }

        // Each tank keeps its fuel: the first pick-up to draw air does so at the filling that leaves its tank too little.
        var needed = Set.Tanks.Select((t, i) => (Tank: i, t.PickUp, t.Shape)).Where(t => t.PickUp is not null)
            .Min(t => LevelOfOne(t.Tank, t.PickUp!.Value.Unusable(t.Shape.At(stance.Tilt))));
        return _all.VolumeBelow(needed);
    }

    private double LevelOfOne(int tank, double cubicMetres) => _each[tank].Filled(cubicMetres);

    private double Standing(Tilt tilt)
    {
        var drawn = Set.Tanks.Where(t => t.PickUp is not null).Min(t => tilt.HeightOf(t.PickUp!.Value.Mouth) + t.PickUp.Value.DrawDownMetres);
        return Set.Tanks.Sum(t =>
        {
            // Fuel leaves a tank without pick-up only down to the mouth of its cross-pipe.
            var least = t.PickUp is { } own ? tilt.HeightOf(own.Mouth) + own.DrawDownMetres : t.CrossPipe is { } mouth ? Math.Max(drawn, tilt.HeightOf(mouth)) : drawn;
            return t.Shape.At(tilt).VolumeBelow(least);
        });
    }

    private double LevelIn(int tank, double cubicMetres, TankStance stance) => stance.IsPassing
        ? Set.Tanks[tank].Shape.At(stance.Tilt).Filled(VolumeOf(tank, Level(cubicMetres)))
        : Set.Joined!.At(stance.Tilt).Filled(cubicMetres);
}
