namespace Tickover.Reports.Charts;

/// <summary>How an area or line looks.</summary>
internal sealed record Look
{
    /// <summary>Paint inside; null leaves it open.</summary>
    internal Paint? Fill { get; init; }

    /// <summary>Paint of the line; null draws none.</summary>
    internal Paint? Stroke { get; init; }

    /// <summary>Width of the line, drawing units; zero takes the theme's stroke, which daylight makes heavier.</summary>
    internal double Width { get; init; }

    /// <summary>Lengths of dash and gap, drawing units; null is unbroken.</summary>
    internal (double Dash, double Gap)? Dashes { get; init; }

    /// <summary>How much shows, 0 to 1.</summary>
    internal double Opacity { get; init; } = 1;

    internal static Look Filled(Paint fill) => new() { Fill = fill };

    internal static Look Line(Paint stroke, double width) => new() { Stroke = stroke, Width = width };

    internal static Look Outlined(Paint fill, Paint stroke) => new() { Fill = fill, Stroke = stroke };
}
