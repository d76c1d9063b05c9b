using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>Chooses jets: the set whose expected cost over the map is least, from the shelf, from the sizes sold, and with least effort.</summary>
public static class JetChooser
{
    private const double MostOfTheWay = 0.25;             // of what there is to gain may be left for fewer parts; assumed
    private const double WorthNaming = 0.005;             // of λ

    /// <summary>Chooses.</summary>
    /// <param name="car">The car as it is.</param>
    /// <param name="forecast">A fit to its readings, or the priors.</param>
    /// <param name="settings">Shelf and targets; null for the trade's own and no shelf.</param>
    /// <param name="progress">Told what is being done, or null.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The advice.</returns>
    public static JetAdvice Choose(
        Car car, IForecast forecast, JetChoiceSettings? settings = null, IProgress<string>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(forecast);
        var how = settings ?? new JetChoiceSettings();
        progress?.Report("Computing the car as it is");
        var ground = new JetGround(car, forecast, how.Targets, cancellation);
        var search = new JetSearch(ground, forecast, car);
        var sizes = JetCandidates.Of(car, null);
        var stock = how.Shelf is null ? sizes : JetCandidates.Of(car, how.Shelf);
        var contests = search.Run(how.Shelf is null ? [sizes] : [sizes, stock], progress, cancellation);
        var (sold, shelved) = (contests[0], contests[^1]);
        progress?.Report("Computing the sets chosen in full");
        JetProposal Full(JetSet set, JetCandidates from, int most) =>
            Proposal(car, search.Polish(set, from, most, cancellation), (ground, forecast, how.Shelf), cancellation);
        var least = Least(shelved.Kept, shelved.All);
        var ordered = Full(sold.All.Best.Set!, sizes, JetParts.All.Count + 1);
        var shelf = how.Shelf is null ? null : Full(shelved.All.Best.Set!, stock, JetParts.All.Count + 1);
        return new JetAdvice
        {
            Now = Proposal(car, JetSet.Fitted(car), (ground, forecast, how.Shelf), cancellation),
            // What lies on the shelf can be ordered too.
            IfOrdered = shelf is not null && shelf.Cost < ordered.Cost ? shelf : ordered,
            FromShelf = shelf,
            LeastEffort = Full(least, stock, search.Changed(least)),
            Driving = [.. JetTargets.Regimes.Select(r => (r, ground.Share(r)))],
            Tried = sold.Tried + (how.Shelf is null ? 0 : shelved.Tried),
            QuickReckoning = search.QuickError(sold.All.Best.Set!, cancellation),
        };
    }

    // The fewest parts whose cost leaves no more than a quarter of the gain.
    private static JetSet Least(Contest kept, Contest all)
    {
        var (nothing, best) = (kept.WithAtMost(0).Cost, all.Best.Cost);
        for (var parts = 0; ; parts++)
        {
            var (cost, set) = kept.WithAtMost(parts);
            if (set is not null && (cost <= best + MostOfTheWay * (nothing - best) || parts >= JetParts.All.Count))
            {
                return set;
            }
        }
    }

    private static JetProposal Proposal(
        Car car, JetSet set, (JetGround Ground, IForecast Forecast, JetShelf? Shelf) with, CancellationToken cancellation)
    {
        var changed = set.On(car) ?? throw new InvalidOperationException($"the document of {car.Name} refuses a set that was tried");
        var map = ReferenceEquals(changed, car) ? with.Ground.Now : with.Forecast.Predict(changed, cancellation);
        return new JetProposal
        {
            Car = changed,
            Changes = Changes(car, set, with, cancellation),
            Map = map,
            InTarget = [.. JetTargets.Regimes.Select(r => (r, with.Ground.InTarget(map, r)))],
            InTargetOverall = with.Ground.InTarget(map),
            ShareBand = ShareBand.Of(map, with.Ground.Cells, with.Ground.Weights, with.Ground.Targets),
            Expected = RegimeForecast.Of(map, with.Ground),
            Cost = with.Ground.Cost(map),
        };
    }

    private static List<JetChange> Changes(Car car, JetSet set, (JetGround Ground, IForecast Forecast, JetShelf? Shelf) with, CancellationToken cancellation)
    {
        var fitted = JetSet.Fitted(car);
        var full = ModelOf(set);
        var changes = new List<(int Order, JetChange Change)>();
        for (var i = 0; i < JetParts.All.Count; i++)
        {
            var part = JetParts.All[i];
            if (set.Sizes[i] != fitted.Sizes[i])
            {
                var pieces = part.IsSetting ? 0 : car.Barrels.Count;
                changes.Add((part.Order, new JetChange
                {
                    Part = part.Name,
                    Label = part.Label,
                    From = part.Text(fitted.Sizes[i]),
                    To = part.Text(set.Sizes[i]),
                    Pieces = pieces,
                    ToOrder = Math.Max(0, pieces - (with.Shelf?.Count(part, set.Sizes[i]) ?? 0)),
                    Effects = Effects(ModelOf(set.With(part, fitted.Sizes[i])), full, with.Ground),
                }));
            }
        }

        if (set.Tube is { } tube)
        {
            changes.Add((8, new JetChange
            {
                Part = "emulsionTube",
                Label = "Emulsion tube",
                From = car.Barrels[0].EmulsionTube ?? "fitted",
                To = tube.Code,
                Pieces = car.Barrels.Count,
                ToOrder = Math.Max(0, car.Barrels.Count - tube.Count),
                Effects = Effects(ModelOf(set with { Tube = null }), full, with.Ground),
            }));
        }

        return [.. changes.OrderBy(c => c.Order).Select(c => c.Change)];

        double[]? ModelOf(JetSet of) => of.On(car) is { } made ? with.Ground.Read(with.Forecast.Equivalence(made, cancellation), CalibrationGrid.Of(made)) : null;
    }

    private static IReadOnlyList<(string Regime, double Part)> Effects(double[]? without, double[]? full, JetGround ground) =>
        without is null || full is null
            ? []
            : [.. JetTargets.Regimes.Select(r => (Regime: r, Points: ground.Cells.Where(p => string.Equals(ground.Targets[p].Regime, r, StringComparison.Ordinal)).ToList())).Where(r => r.Points.Count > 0)
                .Select(r => (r.Regime, Math.Exp(r.Points.Sum(p => ground.Weights[p] * (full[p] - without[p])) / r.Points.Sum(p => ground.Weights[p])) - 1))
                .Where(e => Math.Abs(e.Item2) >= WorthNaming)];
}
