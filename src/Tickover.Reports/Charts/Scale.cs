namespace Tickover.Reports.Charts;

/// <summary>Maps values to places along an axis and back.</summary>
internal sealed class Scale
{
    private readonly double _from;
    private readonly double _to;

    /// <summary>Sets up an axis.</summary>
    /// <param name="kind">How values are spread.</param>
    /// <param name="values">First and last value; not negative on a square-root axis, and apart.</param>
    /// <param name="places">Place of the first and of the last value.</param>
    internal Scale(ScaleKind kind, (double From, double To) values, (double From, double To) places)
    {
        var apart = values.To - values.From;
        if (!double.IsFinite(apart) || apart == 0 || (kind == ScaleKind.SquareRoot && Math.Min(values.From, values.To) < 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(values), values, "two different finite values, on a square-root axis none below zero");
        }

        (Kind, Values, Places) = (kind, values, places);
        (_from, _to) = (Stretch(values.From), Stretch(values.To));
    }

    internal ScaleKind Kind { get; }

    internal (double From, double To) Values { get; }

    internal (double From, double To) Places { get; }

    internal double ToPlace(double value) =>
        Places.From + (Stretch(value) - _from) / (_to - _from) * (Places.To - Places.From);

    internal double ToValue(double place)
    {
        var stretched = _from + (place - Places.From) / (Places.To - Places.From) * (_to - _from);
        return Kind == ScaleKind.SquareRoot ? Math.Sign(stretched) * stretched * stretched : stretched;
    }

    // Below zero the root is mirrored, so that a place a hair off the axis still has a value
    private double Stretch(double value) =>
        Kind == ScaleKind.SquareRoot ? Math.Sign(value) * Math.Sqrt(Math.Abs(value)) : value;
}
