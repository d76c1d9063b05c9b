using Tickover.Physics;
using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>What two tanks and their gauge do on a road, why the gauge lies, and what helps.</summary>
public sealed record GaugeAnalysis
{
    private const double LitresPerCubicMetre = 1000;

    /// <summary>What was worked out.</summary>
    public required GaugeStory Story { get; init; }

    /// <summary>The course, five moments a second.</summary>
    public required IReadOnlyList<SendingMoment> Course { get; init; }

    /// <summary>What the needle says, L, at each moment.</summary>
    public required IReadOnlyList<double> NeedleLitres { get; init; }

    /// <summary>The best estimate of the fuel really there, at each moment.</summary>
    public required IReadOnlyList<FuelEstimate> Estimates { get; init; }

    /// <summary>As it is and each remedy on the same road.</summary>
    public required IReadOnlyList<GaugeRemedy> Remedies { get; init; }

    /// <summary>In words: what happens and why.</summary>
    public required IReadOnlyList<GaugeAdvice> Advice { get; init; }

    /// <summary>Both tanks full, L.</summary>
    public required double CapacityLitres { get; init; }

    /// <summary>Whether the model was used within its range.</summary>
    public required Validity Validity { get; init; }

    /// <summary>What a needle at rest means, the car level and the tanks levelled.</summary>
    /// <param name="needle">0 at E, 1 at F.</param>
    /// <returns>m³ in both tanks; the middle where several amounts share a needle.</returns>
    public double CubicMetresAt(double needle) => new NeedleScale(Story.Tanks).CubicMetresAt(needle);

    /// <summary>Truth, needle and estimate side by side, at each moment.</summary>
    /// <returns>The moments in their order.</returns>
    public IReadOnlyList<GaugeMoment> Moments() =>
    [
        .. Course.Select((m, k) => new GaugeMoment(
            m.Seconds, (m.LeftCubicMetres + m.RightCubicMetres) * LitresPerCubicMetre, NeedleLitres[k],
            Estimates[k].CubicMetres * LitresPerCubicMetre, Estimates[k].LowCubicMetres * LitresPerCubicMetre, Estimates[k].HighCubicMetres * LitresPerCubicMetre)),
    ];
}
