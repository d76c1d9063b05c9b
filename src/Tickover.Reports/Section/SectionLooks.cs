using Tickover.Reports.Charts;

namespace Tickover.Reports.Section;

/// <summary>Looks of the substances: colour means fuel, air or metal; marking-out blue means chosen.</summary>
internal static class SectionLooks
{
    internal static readonly Look Casing = Look.Outlined(Paint.Hatched(Hatch.Casing), Paint.MetalEdge);
    internal static readonly Look Metal = Look.Outlined(Paint.Metal, Paint.MetalEdge);
    internal static readonly Look Fuel = new() { Fill = Paint.Fuel, Stroke = Paint.FuelEdge, Width = 1.2 };
    internal static readonly Look Cavity = Look.Outlined(Paint.Surface, Paint.MetalEdge);
    internal static readonly Look Air = Look.Filled(Paint.Air) with { Opacity = 0.5 };
    internal static readonly Look AirPassage = new() { Fill = Paint.Air, Stroke = Paint.AirEdge, Width = 1.2 };
    internal static readonly Look AirLine = Look.Line(Paint.AirEdge, 3);
    internal static readonly Look Drop = Look.Filled(Paint.FuelEdge);
    internal static readonly Look Behind = Look.Line(Paint.FuelEdge, 3) with { Dashes = (3, 6) };
    internal static readonly Look Touch = Look.Filled(Paint.Data("transparent"));

    /// <summary>A part's body: metal, or blue where it is chosen.</summary>
    internal static Look Body(bool selected) => selected ? Look.Outlined(Paint.Mark, Paint.Mark) : Metal;
}
