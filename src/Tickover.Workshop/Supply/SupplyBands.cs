namespace Tickover.Workshop.Supply;

/// <summary>What is wanted of a fuel supply; common practice, where nothing else is said.</summary>
public static class SupplyBands
{
    /// <summary>Words that go with every verdict.</summary>
    public const string Origin = "Limits are common practice: a quarter more than the demand at the float valves, twice the full-load need out of the open line, a metre of fuel and a tenth of a bar above boiling, four fifths of the flooding pressure, a millimetre of level. The maker's figures for this car come first.";

    /// <summary>Margin at the float valves from which there is something to spare, 1.</summary>
    public const double FlowMargin = 1.25;

    /// <summary>Open flow over the full-load need that is asked for, 1.</summary>
    public const double OpenFlow = 2;

    /// <summary>Suction head above boiling, m of fuel.</summary>
    public const double SuctionMetres = 1;

    /// <summary>Pressure above boiling behind the pump, Pa.</summary>
    public const double VapourPascals = 10_000;

    /// <summary>Temperature below boiling in the float chamber, K.</summary>
    public const double ChamberKelvin = 5;

    /// <summary>Part of the flooding pressure, 1.</summary>
    public const double FloodingShare = 0.8;

    /// <summary>Change of the running level, m.</summary>
    public const double LevelMetres = 0.001;

    /// <summary>Change of the running level that upsets mixture, m.</summary>
    public const double LevelMostMetres = 0.003;

    /// <summary>Loading of a filter that it should still carry, times its clean resistance, 1.</summary>
    public const double Loading = 4;
}
