using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>The remedies a workshop can fit, each by itself.</summary>
public static class GaugeRemedies
{
    /// <summary>Name of the car as it is.</summary>
    public const string AsFound = "as-found";

    /// <summary>Hole of the restrictor, share of the pipe's bore.</summary>
    public const double RestrictorShare = 0.4;

    /// <summary>Damping a perforated baffle gives, share of critical; an assumption.</summary>
    public const double BaffleDamping = 0.3;

    /// <summary>How much slower a slower needle is.</summary>
    public const double SlowerBy = 3;

    /// <summary>Time an averaging box takes, s.</summary>
    public const double AveragingSeconds = 60;

    private const double Milli = 1e-3;

    /// <summary>Each remedy's name and the tanks with it.</summary>
    /// <param name="tanks">The tanks as found.</param>
    /// <returns>As found first.</returns>
    public static IReadOnlyList<(string Key, string Name, TwoTanks Tanks)> Of(TwoTanks tanks)
    {
        ArgumentNullException.ThrowIfNull(tanks);
        var hole = Math.Round(RestrictorShare * tanks.Pipe.BoreMetres / Milli, 1) * Milli;
        var opens = tanks.Draw?.PickUp.Side ?? tanks.Sender.Place.Side;
        var gauge = tanks.Gauge;
        return
        [
            (AsFound, "As found", tanks),
            ("restrictor", FormattableString.Invariant($"Restrictor of {hole / Milli:0.#} mm in the cross-pipe"), tanks with { Pipe = tanks.Pipe.WithRestrictor(hole) }),
            ("flap", $"Flap in the cross-pipe, opening to the {(opens is TankSide.Left ? "left" : "right")}", tanks with { Pipe = tanks.Pipe.WithFlap(opens) }),
            ("baffle", "Baffle in each tank", tanks with { Left = tanks.Left with { Damping = BaffleDamping }, Right = tanks.Right with { Damping = BaffleDamping } }),
            ("slow", "Slower needle", tanks with { Gauge = gauge with { LagSeconds = SlowerBy * Math.Max(1, gauge.LagSeconds) } }),
            ("second", "Second sender in the other tank", tanks with { SecondSender = Mirrored(tanks) }),
            ("average", FormattableString.Invariant($"Averaging box, {AveragingSeconds:0} s"), tanks with { Gauge = gauge with { AveragingSeconds = AveragingSeconds } }),
        ];
    }

    private static TankSender Mirrored(TwoTanks tanks)
    {
        var place = tanks.Sender.Place;
        return tanks.Sender with { Place = place with { Side = place.Side is TankSide.Left ? TankSide.Right : TankSide.Left, LeftMetres = -place.LeftMetres } };
    }
}
