using System.Text;

namespace Tickover.Reports.Charts;

/// <summary>Writes lines as SVG path data: relative steps in tenths of a unit, which is a third of the text of absolute ones.</summary>
internal static class SvgPath
{
    private const double Tenths = 10;

    internal static void Append(StringBuilder svg, Polyline line)
    {
        if (line.Points.Count < 2)
        {
            return;
        }

        // Steps are taken between rounded places, so that rounding never adds up along the line
        var (x, y) = Rounded(line.Points[0]);
        svg.Append('M');
        Number(svg, x, first: true);
        Number(svg, y, first: false);
        svg.Append('l');
        var first = true;
        for (var i = 1; i < line.Points.Count; i++)
        {
            var (nextX, nextY) = Rounded(line.Points[i]);
            if (nextX == x && nextY == y && !(first && i == line.Points.Count - 1))
            {
                continue;
            }

            Number(svg, nextX - x, first);
            Number(svg, nextY - y, first: false);
            (x, y, first) = (nextX, nextY, false);
        }

        if (line.Closed)
        {
            svg.Append('z');
        }
    }

    private static (int X, int Y) Rounded(ChartPoint point)
    {
        if (!double.IsFinite(point.X) || !double.IsFinite(point.Y))
        {
            throw new ArgumentOutOfRangeException(nameof(point), point, "a path goes through finite places only");
        }

        return ((int)Math.Round(point.X * Tenths), (int)Math.Round(point.Y * Tenths));
    }

    private static void Number(StringBuilder svg, int tenths, bool first)
    {
        if (tenths < 0)
        {
            svg.Append('-');
        }
        else if (!first)
        {
            svg.Append(' ');
        }

        var (whole, part) = Math.DivRem(Math.Abs(tenths), 10);
        if (whole != 0 || part == 0)
        {
            svg.Append(whole);
        }

        if (part != 0)
        {
            svg.Append('.').Append(part);
        }
    }
}
