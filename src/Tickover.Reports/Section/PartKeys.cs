namespace Tickover.Reports.Section;

/// <summary>Keys of the parts named on the drawing: those of the car's figures, and two for the rows of holes.</summary>
internal static class PartKeys
{
    internal const string AirCorrector = "barrel.airCorrector";
    internal const string EmulsionHoles = "barrel.emulsionHoles";
    internal const string MainJet = "barrel.mainJet";
    internal const string FloatLevel = "barrel.floatLevel";
    internal const string IdleBleed = "barrel.idleBleed";
    internal const string PumpJet = "barrel.pumpJet";
    internal const string IdleJet = "barrel.idleJet";
    internal const string Nozzle = "barrel.nozzle";
    internal const string Choke = "barrel.choke";
    internal const string ProgressionHoles = "barrel.progressionHoles";
    internal const string ThrottleBore = "barrel.throttleBore";
    internal const string ScrewTurns = "barrel.screwTurns";
}
