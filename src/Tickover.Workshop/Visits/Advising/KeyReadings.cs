namespace Tickover.Workshop.Visits.Advising;

/// <summary>The few readings without which a stage tells nothing afterwards, by key of the list of measures. Common practice.</summary>
public static class KeyReadings
{
    /// <summary>Readings of which one at least makes a baseline, with the engine running or, where it does not run, cranked.</summary>
    public static IReadOnlyList<string> Baseline { get; } = ["idleSpeed", "idleAirflow", "carburettorAirflow", "idleDepression", "lambdaIdle", "crankingSpeed"];

    /// <summary>Settings that are read again as left wherever they were read as found.</summary>
    public static IReadOnlyList<string> AsLeft { get; } =
        ["idleSpeed", "idleAirflow", "airflow2500", "carburettorAirflow", "idleDepression", "lambdaIdle", "carbonMonoxide", "idleTiming", "needleShown", "fuelPressure"];

    /// <summary>The key readings of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>Keys of measures, in the order of the work.</returns>
    public static IReadOnlyList<string> Of(Stage stage) => stage switch
    {
        Stage.Arrival => ["needleShown", "jointWetness"],
        Stage.Storage => ["drained", "fuelAppearance", "tankInside", "tankTest"],
        Stage.Gauge => ["crossPipe", "vent", "senderEmpty", "senderFull", "strappingLitres"],
        Stage.Supply => ["hoseFitted", "fuelPressure", "fuelFlow"],
        Stage.StripDown => ["mixtureTurns", "idleJet", "mainJet", "spindleClearance"],
        Stage.Build => ["floatWet", "snapShut"],
        Stage.Balance => ["leakWatch", "oilTemperature", "idleAirflow", "idleSpeed"],
        Stage.Mixture => ["lambdaIdle"],
        Stage.Road => ["route", "lambdaCruise", "restart30", "coldStart"],
        _ => ["needleShown"],
    };
}
