using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>λ along a line through the map, read off the same smooth field that the map shows.</summary>
internal static class Cut
{
    private const int SampleCount = 181;

    internal static IReadOnlyList<CutSample> Through(CrossSectionView view)
    {
        var frame = MapFrame.For(view.Fitted.Grid, PictureSize.Full);
        var fitted = new MapField(view.Fitted, view.Fitted.ForBarrel(view.BarrelNumber), frame);
        var trial = view.Trial is null ? null : new MapField(view.Trial, view.Trial.ForBarrel(view.BarrelNumber), frame);
        var through = Held(frame.Place(view.Spot), frame.Plot);
        var alongSpeed = view.Axis == CrossSectionAxis.Speed;
        var places = alongSpeed
            ? Refinement.Even(frame.Plot.Left, frame.Plot.Right, SampleCount).Select(x => through with { X = x })
            : Refinement.Even(frame.Plot.Bottom, frame.Plot.Top, SampleCount).Select(y => through with { Y = y });
        return
        [
            .. places.Select(place => new CutSample
            {
                Along = alongSpeed ? frame.Speed.ToValue(place.X) : frame.Opening.ToValue(place.Y),
                Fitted = Answer(fitted, place),
                Trial = trial is null ? null : Answer(trial, place),
                Target = MixtureTargets.At(frame.Opening.ToValue(place.Y)),
                Feeding = fitted.Feeding.At(place),
                Why = fitted.Why(place),
            }),
        ];
    }

    private static double? Answer(MapField field, ChartPoint place) => field.HasAnswer(place) ? field.Lambda.At(place) : null;

    // A cut asked for beside the map goes along its border
    private static ChartPoint Held(ChartPoint place, Box plot) =>
        new(Math.Clamp(place.X, plot.Left, plot.Right), Math.Clamp(place.Y, plot.Top, plot.Bottom));
}
