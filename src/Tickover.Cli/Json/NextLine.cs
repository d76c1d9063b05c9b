using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Json;

/// <summary>One reading worth taking.</summary>
/// <param name="SpeedRpm">Speed, rpm.</param>
/// <param name="ThrottleDegrees">Opening, degrees.</param>
/// <param name="Regime">Regime.</param>
/// <param name="WithFittedJets">Whether with the jets fitted now; else with those proposed.</param>
/// <param name="Lambda">Expected λ.</param>
/// <param name="Half">Half width of its 90 % band as a part of it.</param>
/// <param name="Narrows">Part of the doubt it would take away, 0 to 1.</param>
internal sealed record NextLine(double SpeedRpm, double ThrottleDegrees, string Regime, bool WithFittedJets, double Lambda, double Half, double Narrows)
{
    /// <summary>The line of a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The line.</returns>
    public static NextLine Of(NextReading reading) => new(
        reading.SpeedRpm,
        reading.ThrottleDegrees,
        reading.Regime,
        reading.WithFittedJets,
        Math.Round(reading.Expected.Lambda, 4),
        Math.Round(reading.Expected.Half, 4),
        Math.Round(reading.Narrows, 4));
}
