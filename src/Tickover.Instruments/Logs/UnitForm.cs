namespace Tickover.Instruments.Logs;

/// <summary>How a figure of a column becomes SI.</summary>
public enum UnitForm
{
    /// <summary>Times a factor, plus an offset.</summary>
    Linear,

    /// <summary>A factor over the figure.</summary>
    Inverse,

    /// <summary>Pressure over the atmosphere: the barometer is added.</summary>
    OverAtmosphere,

    /// <summary>Depression: taken from the barometer.</summary>
    UnderAtmosphere,

    /// <summary>A time or date written out.</summary>
    Clock,
}
