using Tickover.Physics.Supply;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Supply;

namespace Tickover.Reports.Supply;

/// <summary>Where things stand in the picture of a supply: a column for every part, the line at its heights above, the pressures beneath.</summary>
internal sealed class SupplyFrame
{
    private const double FullWidth = 772;
    private const double PhoneWidth = 366;
    private const double AxisLeft = 58;
    private const double TankWidth = 44;
    private const double RightMargin = 14;
    private const double RunTop = 52;
    private const double RunHeight = 150;
    private const double Between = 62;
    private const double ChartHeight = 170;
    private const double Foot = 40;
    private const double LongestShare = 3;   // a long pipe is drawn at most so many times as wide as a fitting
    private const double MetresShare = 1;    // widths gained for each metre
    private const double HeightMargin = 0.06; // m above and below the line
    private const double Headroom = 1.12;

    private readonly Dictionary<string, (double Left, double Right)> _columns = new(StringComparer.Ordinal);

    internal SupplyFrame(SupplyView view)
    {
        var (line, point) = (view.Analysis.Supply.Line, view.Case.Point);
        Width = view.Size is PictureSize.Phone ? PhoneWidth : FullWidth;
        var left = AxisLeft + TankWidth;
        Run = new Box(AxisLeft, RunTop, Width - AxisLeft - RightMargin, RunHeight);
        Chart = new Box(AxisLeft, Run.Bottom + Between, Run.Width, ChartHeight);
        Bottom = Chart.Bottom + Foot;
        var total = point.Parts.Sum(part => Share(part.Part));
        foreach (var part in point.Parts)
        {
            var right = left + Share(part.Part) / total * (Run.Right - AxisLeft - TankWidth);
            _columns[part.Part.Name] = (left, right);
            left = right;
        }

        var heights = line.Parts.Select(part => part.OutletHeightMetres).Append(line.TankSurfaceHeightMetres).ToList();
        Height = new Scale(ScaleKind.Linear, (heights.Min() - HeightMargin, heights.Max() + HeightMargin), (Run.Bottom, Run.Top));
        Pressure = new Scale(ScaleKind.Linear, Pressures(view), (Chart.Bottom, Chart.Top));
    }

    internal double Width { get; }

    internal double Bottom { get; }

    /// <summary>Where the line is drawn.</summary>
    internal Box Run { get; }

    /// <summary>Where the pressures are drawn.</summary>
    internal Box Chart { get; }

    /// <summary>Where the tank ends.</summary>
    internal static double TankRight => AxisLeft + TankWidth;

    /// <summary>Height above the floor, m.</summary>
    internal Scale Height { get; }

    /// <summary>Pressure against the air, in the document's unit.</summary>
    internal Scale Pressure { get; }

    internal (double Left, double Right) Column(SupplyPart part) => _columns[part.Name];

    private static double Share(SupplyPart part) => part is PipeRun pipe ? Math.Min(LongestShare, 1 + MetresShare * pipe.LengthMetres) : 1;

    // One scale for all three cases, so that they can be compared; what boils is seen as far as it lies near.
    private static (double Least, double Most) Pressures(SupplyView view)
    {
        var gauge = view.Analysis.Cases.SelectMany(one => one.Point.Parts.Select(part => part.StaticPascals - one.Point.Duty.AirPascals)).ToList();
        var unit = view.Analysis.Supply.Unit;
        var (least, most) = (SupplyUnits.FromPascals(unit, gauge.Min()), SupplyUnits.FromPascals(unit, gauge.Max()));
        var span = Math.Max(most - Math.Min(least, 0), SupplyUnits.FromPascals(unit, 1000));
        return (Math.Min(least, 0) - (Headroom - 1) * span, Math.Min(least, 0) + Headroom * span);
    }
}
