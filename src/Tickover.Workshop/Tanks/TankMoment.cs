using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks;

/// <summary>So much fuel in the tanks with the car standing so, given time to level through the cross-pipe.</summary>
public sealed record TankMoment
{
    /// <summary>Fuel in all tanks, l.</summary>
    public required double Litres { get; init; }

    /// <summary>How the car stands.</summary>
    public required Tilt Tilt { get; init; }

    /// <summary>Level of the surface as <see cref="Tilt.HeightOf"/> measures it, m.</summary>
    public required double LevelMetres { get; init; }

    /// <summary>What each tank has of it, l.</summary>
    public required IReadOnlyList<double> Shares { get; init; }

    /// <summary>Number of the tank whose stick is looked at.</summary>
    public required int Stick { get; init; }

    /// <summary>Wetted length of that stick, mm; 0 where it stands dry.</summary>
    public required double DipMillimetres { get; init; }

    /// <summary>How deep the mouth of each tank's pick-up lies under the surface, mm; below zero where it is bare, null without one.</summary>
    public required IReadOnlyList<double?> CoverMillimetres { get; init; }

    /// <summary>Whether some pick-up is deep enough not to draw air; null without one.</summary>
    public required bool? IsFed { get; init; }

    /// <summary>The tank whose stick tells: that of the fill, or of the sender, or the first.</summary>
    /// <param name="set">The tanks.</param>
    /// <returns>Its number.</returns>
    public static int StickOf(TankSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return set.Fill?.Tank ?? set.Sender?.Tank ?? 0;
    }

    /// <summary>Works it out.</summary>
    /// <param name="analysis">The tanks.</param>
    /// <param name="litres">Fuel in all of them, l.</param>
    /// <param name="tilt">How the car stands.</param>
    /// <returns>The moment; null where no tank is described.</returns>
    public static TankMoment? Of(TankAnalysis analysis, double litres, Tilt tilt)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        if (analysis.Set.Joined is not { } joined)
        {
            return null;
        }

        var tanks = analysis.Set.Tanks;
        var stick = StickOf(analysis.Set);
        var level = joined.At(tilt).Filled(TankUnits.CubicMetres(litres));
        return new TankMoment
        {
            Litres = litres,
            Tilt = tilt,
            LevelMetres = level,
            Shares = [.. tanks.Select(t => TankUnits.Litres(t.Shape.At(tilt).VolumeBelow(level)))],
            Stick = stick,
            DipMillimetres = Math.Max(0, TankUnits.Millimetres(tilt.DepthOver(level, tanks[stick].Foot))),
            CoverMillimetres = [.. tanks.Select(t => t.PickUp is { } p ? TankUnits.Millimetres(p.Cover(level, tilt)) : (double?)null)],
            IsFed = tanks.Any(t => t.PickUp is not null) ? tanks.Any(t => t.PickUp is { } p && p.Cover(level, tilt) > p.DrawDownMetres) : null,
        };
    }
}
