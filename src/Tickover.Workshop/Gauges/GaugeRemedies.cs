using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>What each remedy changes, and its words.</summary>
public static class GaugeRemedies
{
    /// <summary>Hole of the restrictor over the pipe's bore.</summary>
    public const double RestrictorPart = 0.4;

    private const double FlapShut = 5000;
    private const double BaffleDamping = 0.3;
    private const double Slower = 3;

    /// <summary>All, nothing first.</summary>
    public static IReadOnlyList<GaugeRemedy> All { get; } = Enum.GetValues<GaugeRemedy>();

    /// <summary>The remedy in words.</summary>
    /// <param name="remedy">Which.</param>
    /// <param name="pair">The tanks, for the size of the restrictor.</param>
    /// <returns>As at the beginning of a sentence.</returns>
    public static string Words(GaugeRemedy remedy, TwoTanks pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        return remedy switch
        {
            GaugeRemedy.Restrictor => FormattableString.Invariant($"Restrictor, {RestrictorPart * 1000 * pair.Pipe.BoreMetres:0.#} mm hole"),
            GaugeRemedy.Flap => "Flap towards the pick-up",
            GaugeRemedy.Baffle => "Baffles in both tanks",
            GaugeRemedy.SlowNeedle => "Needle three times as slow",
            GaugeRemedy.SecondSender => "Second sender in series",
            GaugeRemedy.Averaging => "Mean of 90 s",
            _ => "As found",
        };
    }

    /// <summary>The tanks with a remedy.</summary>
    /// <param name="pair">As found.</param>
    /// <param name="remedy">Which; averaging changes no part.</param>
    /// <returns>The tanks.</returns>
    public static TwoTanks With(TwoTanks pair, GaugeRemedy remedy)
    {
        ArgumentNullException.ThrowIfNull(pair);
        return remedy switch
        {
            GaugeRemedy.Restrictor => pair with { Pipe = Restricted(pair.Pipe) },
            GaugeRemedy.Flap => pair with { Pipe = Flapped(pair) },
            GaugeRemedy.Baffle => pair with { Left = pair.Left with { SloshDamping = BaffleDamping }, Right = pair.Right with { SloshDamping = BaffleDamping } },
            GaugeRemedy.SlowNeedle => pair with { Fitting = pair.Fitting! with { Gauge = pair.Fitting.Gauge with { TimeConstantSeconds = Slower * pair.Fitting.Gauge.TimeConstantSeconds } } },
            GaugeRemedy.SecondSender => pair with { Fitting = Doubled(pair.Fitting!) },
            _ => pair,
        };
    }

    private static CrossPipe Restricted(CrossPipe pipe)
    {
        var loss = CrossPipe.PlateLoss(RestrictorPart * pipe.BoreMetres, pipe.BoreMetres);
        return pipe with { LossToLeft = pipe.LossToLeft + loss, LossToRight = pipe.LossToRight + loss };
    }

    private static CrossPipe Flapped(TwoTanks pair) => pair.Draw.PickUpSide == TankSide.Left
        ? pair.Pipe with { LossToRight = pair.Pipe.LossToRight + FlapShut }
        : pair.Pipe with { LossToLeft = pair.Pipe.LossToLeft + FlapShut };

    private static SenderFitting Doubled(SenderFitting fitting)
    {
        // Mirrored: what one float gains in a bend the other loses.
        var (side, place) = (fitting.First.Side == TankSide.Left ? TankSide.Right : TankSide.Left, fitting.First.Place);
        return fitting with { Second = new TankSender(side, place with { LeftMetres = -place.LeftMetres }, fitting.First.Arm) };
    }
}
