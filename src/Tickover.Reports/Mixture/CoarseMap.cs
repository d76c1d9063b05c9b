using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>The computed points of a barrel at their places on the drawing.</summary>
internal sealed class CoarseMap
{
    private readonly BarrelPoint[,] _points;
    private readonly double[] _xs;
    private readonly double[] _ys;

    internal CoarseMap(SurveyGrid grid, BarrelMap barrel, MapFrame frame)
    {
        _points = barrel.Points;
        Flags = barrel.AllPoints().Aggregate(PointValidity.Inside, (flags, point) => flags | point.Validity);
        _xs = [.. grid.SpeedsRpm.Select(frame.Speed.ToPlace)];
        // Openings rise upwards on the drawing, places rise downwards
        _ys = [.. grid.ThrottleDegrees.Reverse().Select(frame.Opening.ToPlace)];
    }

    /// <summary>A figure of every point; what is not finite becomes a gap.</summary>
    internal Field Figure(Func<BarrelPoint, double> figure)
    {
        var values = new double[_xs.Length, _ys.Length];
        for (var i = 0; i < _xs.Length; i++)
        {
            for (var j = 0; j < _ys.Length; j++)
            {
                var value = figure(_points[i, _ys.Length - 1 - j]);
                values[i, j] = double.IsFinite(value) ? value : double.NaN;
            }
        }

        return new Field(_xs, _ys, values);
    }

    /// <summary>All flags that occur.</summary>
    internal PointValidity Flags { get; }

    internal Field Flag(PointValidity flag) => Figure(p => p.Validity.HasFlag(flag) ? 1 : 0);

    /// <summary>The figure that a flag follows from; larger where it holds.</summary>
    internal Field Indicator(PointValidity flag) => flag switch
    {
        PointValidity.Overrun => Figure(p => -p.BrakeMeanPressurePascals),
        PointValidity.TooLeanToRun => Figure(p => p.Lambda > 0 ? p.Lambda : double.NaN),
        PointValidity.TooRichToRun => Figure(p => p.Lambda > 0 ? -p.Lambda : double.NaN),
        PointValidity.BeyondRatedSpeed => Speeds(),
        _ => Figure(_ => double.NaN),
    };

    private Field Speeds() => Figure(_ => 0).Map((i, _) => _xs[i]);
}
