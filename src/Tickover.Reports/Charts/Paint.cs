namespace Tickover.Reports.Charts;

/// <summary>What an area or a line is painted with: a colour of the theme by its role, a data colour, or a hatch.</summary>
/// <param name="Kind">Which of the three.</param>
/// <param name="Name">Name of the theme's colour, the data colour itself as #rrggbb, or the name of the hatch.</param>
internal readonly record struct Paint(PaintKind Kind, string Name)
{
    internal static readonly Paint Ink = Theme("ink");
    internal static readonly Paint Ink2 = Theme("ink-2");
    internal static readonly Paint Surface = Theme("surface");
    internal static readonly Paint Sunken = Theme("sunken");
    internal static readonly Paint Hair = Theme("hair");
    internal static readonly Paint Mark = Theme("mark");
    internal static readonly Paint OnMark = Theme("on-mark");
    internal static readonly Paint Fuel = Theme("fuel");
    internal static readonly Paint FuelEdge = Theme("fuel-edge");
    internal static readonly Paint Air = Theme("air");
    internal static readonly Paint AirEdge = Theme("air-edge");
    internal static readonly Paint Metal = Theme("metal");
    internal static readonly Paint MetalEdge = Theme("metal-edge");
    internal static readonly Paint Band = Theme("band");
    internal static readonly Paint Black = Data("#000");
    internal static readonly Paint White = Data("#fff");

    internal static Paint Theme(string name) => new(PaintKind.Theme, name);

    internal static Paint Data(string colour) => new(PaintKind.Data, colour);

    internal static Paint Hatched(Hatch hatch) => new(PaintKind.Hatch, hatch.ToString());
}
