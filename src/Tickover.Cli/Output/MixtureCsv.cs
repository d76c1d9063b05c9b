using System.Globalization;
using CsvHelper;
using Tickover.Cli.Json;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>The map as comma-separated values: RFC 4180, invariant numbers, one line a barrel and point.</summary>
internal static class MixtureCsv
{
    // Name and value of every column but the first two; the names are those of the JSON.
    private static readonly (string Name, Func<MixturePoint, object?> Value)[] Columns =
    [
        ("speedRpm", p => p.SpeedRpm),
        ("throttleDegrees", p => p.ThrottleDegrees),
        ("lambda", p => p.Lambda),
        ("airFuelRatio", p => p.AirFuelRatio),
        ("targetRichest", p => p.TargetRichest),
        ("targetLeanest", p => p.TargetLeanest),
        ("feeding", p => p.Feeding),
        ("airKilogramsPerHour", p => p.AirKilogramsPerHour),
        ("fuelKilogramsPerHour", p => p.FuelKilogramsPerHour),
        ("mainFuelKilogramsPerHour", p => p.MainFuelKilogramsPerHour),
        ("idleFuelKilogramsPerHour", p => p.IdleFuelKilogramsPerHour),
        ("progressionFuelKilogramsPerHour", p => p.ProgressionFuelKilogramsPerHour),
        ("pumpFuelKilogramsPerHour", p => p.PumpFuelKilogramsPerHour),
        ("correctorAirKilogramsPerHour", p => p.CorrectorAirKilogramsPerHour),
        ("meanDepressionPascals", p => p.MeanDepressionPascals),
        ("peakDepressionPascals", p => p.PeakDepressionPascals),
        ("manifoldPressurePascals", p => p.ManifoldPressurePascals),
        ("wellDropMillimetres", p => p.WellDropMillimetres),
        ("backflowFraction", p => p.BackflowFraction),
        ("volumetricEfficiency", p => p.VolumetricEfficiency),
        ("brakeMeanPressurePascals", p => p.BrakeMeanPressurePascals),
        ("validity", p => string.Join(' ', p.Validity)),
    ];

    /// <summary>Writes the table.</summary>
    /// <param name="result">What was computed.</param>
    /// <returns>The text; lines end in CR LF as the standard has it.</returns>
    public static string Text(MixtureResult result)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text))
        {
            csv.WriteField("map");
            csv.WriteField("barrel");
            foreach (var (name, _) in Columns)
            {
                csv.WriteField(name);
            }

            csv.EndRecord();
            foreach (var number in result.Groups.SelectMany(g => g))
            {
                Write(csv, "fitted", number, result.Fitted);
                if (result.Trial is { } trial)
                {
                    Write(csv, "trial", number, trial);
                }
            }
        }

        return text.ToString();
    }

    private static void Write(CsvWriter csv, string name, int number, MixtureMap map)
    {
        foreach (var point in MixtureJson.Points(map, number))
        {
            csv.WriteField(name);
            csv.WriteField(number.ToString(CultureInfo.InvariantCulture));
            foreach (var (_, value) in Columns)
            {
                csv.WriteField(Convert.ToString(value(point), CultureInfo.InvariantCulture));
            }

            csv.EndRecord();
        }
    }
}
