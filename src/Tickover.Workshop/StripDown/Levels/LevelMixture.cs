namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What a millimetre more fuel does to the mixture somewhere.</summary>
/// <param name="Regime">Where, such as "idle".</param>
/// <param name="Rpm">Engine speed, rpm; zero where no car was named.</param>
/// <param name="Throttle">Plate opening from seated, degrees; zero where no car was named.</param>
/// <param name="Signal">Mean depression at the nozzle, Pa.</param>
/// <param name="FuelPart">More fuel as a part of it, 1.</param>
/// <param name="Lambda">λ with the level wanted; null where no car was named.</param>
/// <param name="LambdaHigher">λ with a millimetre more; null where no car was named.</param>
public sealed record LevelMixture(string Regime, double Rpm, double Throttle, double Signal, double FuelPart, double? Lambda, double? LambdaHigher);
