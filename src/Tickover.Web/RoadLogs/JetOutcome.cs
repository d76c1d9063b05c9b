using Tickover.Workshop.Calibration;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.RoadLogs;

/// <summary>What came of a choice of jets.</summary>
public sealed record JetOutcome
{
    /// <summary>The fit; null where there are no logs or they are refused.</summary>
    public CarFit? Fit { get; init; }

    /// <summary>The choice; null where it was stopped.</summary>
    public JetAdvice? Advice { get; init; }

    /// <summary>Readings that would settle most.</summary>
    public IReadOnlyList<NextReading> Next { get; init; } = [];

    /// <summary>The map of what is fitted, as foretold.</summary>
    public MixtureMap? Now { get; init; }

    /// <summary>The map of the proposal that is shown, as foretold.</summary>
    public MixtureMap? Then { get; init; }

    /// <summary>Why the logs are not fitted to; empty where they are.</summary>
    public IReadOnlyList<string> Refusals { get; init; } = [];

    /// <summary>Whether somebody stopped it.</summary>
    public bool Stopped { get; init; }

    /// <summary>The sets on offer beside what is fitted, the one to begin with first.</summary>
    public IReadOnlyList<JetOffer> Offers => Advice is null
        ? []
        :
        [
            .. Advice.FromShelf is { } shelf ? new[] { new JetOffer("shelf", "Best from the shelf", shelf) } : [],
            new JetOffer("least", "Least effort", Advice.LeastEffort),
            new JetOffer("ordered", "Best if ordered", Advice.IfOrdered),
        ];

    /// <summary>The proposal to begin with: from the shelf where there is one, else the least effort.</summary>
    public JetProposal? Proposal => Advice is null ? null : Advice.FromShelf ?? Advice.LeastEffort;
}
