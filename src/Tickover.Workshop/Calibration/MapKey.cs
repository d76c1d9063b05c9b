namespace Tickover.Workshop.Calibration;

/// <summary>What a map of a run depends on: the run and the values of the unknowns that act on its circuits.</summary>
internal sealed class MapKey : IEquatable<MapKey>
{
    private readonly int _run;
    private readonly double[] _values;

    internal MapKey(int run, IReadOnlyList<double> values)
    {
        _run = run;
        _values = [.. values.Take(CalibrationUnknowns.OfTheCar.Count)];
        _values[CircuitTrims.PlateZero] = 0;
    }

    /// <inheritdoc/>
    public bool Equals(MapKey? other) => other is not null && _run == other._run && _values.AsSpan().SequenceEqual(other._values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as MapKey);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(_run);
        Array.ForEach(_values, hash.Add);
        return hash.ToHashCode();
    }
}
