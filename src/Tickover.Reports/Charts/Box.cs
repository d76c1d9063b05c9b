namespace Tickover.Reports.Charts;

/// <summary>An upright rectangle in drawing units.</summary>
internal readonly record struct Box(double Left, double Top, double Width, double Height)
{
    internal double Right => Left + Width;

    internal double Bottom => Top + Height;

    internal ChartPoint Centre => new(Left + Width / 2, Top + Height / 2);

    internal static Box Around(ChartPoint centre, double width, double height) =>
        new(centre.X - width / 2, centre.Y - height / 2, width, height);

    internal bool Overlaps(Box other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    internal bool Contains(Box other) =>
        other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    internal bool Contains(ChartPoint point) =>
        point.X >= Left && point.X <= Right && point.Y >= Top && point.Y <= Bottom;

    internal Box Grown(double by) => new(Left - by, Top - by, Width + 2 * by, Height + 2 * by);
}
