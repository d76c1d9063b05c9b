using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>Everything the mixture and jets pages show of one car in one state.</summary>
public sealed record Bench
{
    /// <summary>The document on the shelf.</summary>
    public required ShelvedCar Shelved { get; init; }

    /// <summary>The state, with speed and opening filled in.</summary>
    public required BenchQuery Query { get; init; }

    /// <summary>The car as it is.</summary>
    public required Car Fitted { get; init; }

    /// <summary>The barrel looked at.</summary>
    public required CarBarrel Barrel { get; init; }

    /// <summary>Map of the car as it is.</summary>
    public required MixtureMap FittedMap { get; init; }

    /// <summary>The working at the point, fitted.</summary>
    public required PointWorking FittedPoint { get; init; }

    /// <summary>Where the barrel lies furthest from target.</summary>
    public required FurthestPoint Furthest { get; init; }

    /// <summary>The car as it would be; null where there is no trial or it cannot be read.</summary>
    public Car? Trial { get; init; }

    /// <summary>Map of the car as it would be.</summary>
    public MixtureMap? TrialMap { get; init; }

    /// <summary>The working at the point on trial.</summary>
    public PointWorking? TrialPoint { get; init; }

    /// <summary>What is wrong with the trial.</summary>
    public IReadOnlyList<Fault> TrialFaults { get; init; } = [];

    /// <summary>Time the trial took on this server, ms; null where there was none.</summary>
    public double? TrialMilliseconds { get; init; }

    /// <summary>For which screens the pictures are drawn.</summary>
    public Screen Screen { get; init; }

    /// <summary>Whether pictures for a tablet or a desk are drawn.</summary>
    public bool IsWide => Screen != Screen.Narrow;

    /// <summary>Whether pictures for a phone are drawn.</summary>
    public bool IsNarrow => Screen != Screen.Wide;

    /// <summary>The working of the map on the page: trial where that is shown, else fitted.</summary>
    public PointWorking Point => Query.Show == MapShown.Trial && TrialPoint is not null ? TrialPoint : FittedPoint;

    /// <summary>Numbers of the barrels alike with the one looked at.</summary>
    public IReadOnlyList<int> Alike => FittedMap.ForBarrel(Barrel.Number).AlikeBarrels;
}
