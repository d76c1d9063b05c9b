namespace Tickover.Physics.Sending;

/// <summary>What an estimate of the fuel takes for granted; every figure an assumption that can be set.</summary>
public sealed record FuelEstimateSettings
{
    /// <summary>Error of the needle beside the model, standing, in parts of the scale.</summary>
    public double NeedleError { get; init; } = 0.02;

    /// <summary>Time for which such an error stays the same, s: readings closer than this are not counted as new ones.</summary>
    public double ErrorHoldsSeconds { get; init; } = 20;

    /// <summary>Acceleration at which a reading is trusted half as far, m/s².</summary>
    public double GateAcceleration { get; init; } = 2.0;

    /// <summary>Error of the table of litres against needle, one standard deviation, m³.</summary>
    public double TableError { get; init; } = 0.0003;

    /// <summary>Error of the flow in the cross-pipe as a part of it.</summary>
    public double PipeError { get; init; } = 0.15;

    /// <summary>Burnt before anything is known, m³/s, and how far off that may be.</summary>
    public double Burnt { get; init; } = 3e-6;

    /// <summary>Most that an engine burns, m³/s.</summary>
    public double MostBurnt { get; init; } = 1.5e-5;

    /// <summary>How wrong the first reading may be, one standard deviation in each tank, m³.</summary>
    public double StartError { get; init; } = 0.004;

    /// <summary>Settings for a needle alone, without accelerations: bends then look like errors that last.</summary>
    public static FuelEstimateSettings NeedleAlone { get; } = new() { NeedleError = 0.12, ErrorHoldsSeconds = 60, PipeError = 1 };
}
