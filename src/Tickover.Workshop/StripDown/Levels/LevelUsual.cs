namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What holds where a sheet of levels does not say: common practice of the trade unless another origin stands beside it.</summary>
public static class LevelUsual
{
    /// <summary>Levels equal over the set within, mm (trade report 1.13, common practice).</summary>
    public const double Limit = 0.5;

    /// <summary>Floats equal within, g (trade report 1.11, common practice).</summary>
    public const double MassLimit = 0.5;

    /// <summary>A calliper or float gauge against a loose float, ± mm (assumed).</summary>
    public const double Rule = 0.25;

    /// <summary>Kitchen scales to a tenth, ± g (assumed).</summary>
    public const double Scales = 0.1;

    /// <summary>Signal at which the main circuit has just begun, Pa (carburation report 1.2).</summary>
    public const double Signal = 300;

    /// <summary>Fuel of one carburettor at idle, l/h (assumed).</summary>
    public const double IdleFlow = 0.5;

    /// <summary>Temperature of the fuel, °C (assumed).</summary>
    public const double Celsius = 20;

    /// <summary>How well a wet level is read in a sight tube, ± mm (assumed).</summary>
    public const double SightTube = 0.3;

    /// <summary>How well the float's area is known, as a part, ± (assumed).</summary>
    public const double AreaPart = 0.03;

    /// <summary>How well the pressure is known, as a part, ± (assumed).</summary>
    public const double PressurePart = 0.1;
}
