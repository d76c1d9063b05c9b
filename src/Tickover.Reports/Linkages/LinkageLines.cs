using Tickover.Reports.Charts;

namespace Tickover.Reports.Linkages;

/// <summary>How the line of each carburettor looks, on the plan's labels and in the charts alike: colour and dash, so that either tells it.</summary>
internal static class LinkageLines
{
    private const int Colours = 6;
    private static readonly (double Dash, double Gap)?[] Dashes = [null, (7, 3), (2, 3), (14, 5), (4, 2), (10, 2)];

    internal const double Width = 2.5;

    internal static Paint Paint(int carburettor) => Charts.Paint.Theme($"series-{carburettor % Colours + 1}");

    internal static Look Look(int carburettor) => new() { Stroke = Paint(carburettor), Width = Width, Dashes = Dashes[carburettor % Dashes.Length] };
}
