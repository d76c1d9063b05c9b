namespace Tickover.Reports.Charts;

/// <summary>The few things a picture is made of; drawn as SVG for the page, and by another backend for paper.</summary>
internal interface IDrawing
{
    /// <summary>Lines and areas as one path; overlapping closed lines leave holes (even-odd).</summary>
    void Path(IEnumerable<Polyline> lines, Look look);

    /// <summary>A straight line.</summary>
    void Line(ChartPoint from, ChartPoint to, Look look);

    /// <summary>A circle.</summary>
    void Circle(ChartPoint centre, double radius, Look look);

    /// <summary>A rectangle with eased corners.</summary>
    void Plate(Box box, double radius, Look look);

    /// <summary>One line of text; the point is on its baseline.</summary>
    void Text(string text, ChartPoint at, Lettering lettering);

    /// <summary>Keeps a place for marks that come later, such as the ring of a tap: over what is drawn so far, under the words that follow.</summary>
    void MarksHere();

    /// <summary>Everything until the result is disposed shows inside these areas only.</summary>
    IDisposable ClippedTo(IReadOnlyList<Polyline> areas);

    /// <summary>Everything until the result is disposed is one part a person can choose.</summary>
    IDisposable Part(PartMark mark);
}
