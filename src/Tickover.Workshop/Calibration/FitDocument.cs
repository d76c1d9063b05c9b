using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Calibration;

/// <summary>Writes and reads a fit: the readings with the car they came from, and what was made of them.</summary>
/// <remarks>A fit is made afresh from its readings when it is read, so that it never speaks of a model that is no more.</remarks>
public static class FitDocument
{
    /// <summary>Name and version of the form; docs/schemas/fit.schema.json.</summary>
    public const string Format = "tickover-fit-1";

    private const int MostRuns = 100;
    private static readonly JsonSerializerOptions Form = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter() },
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
    };

    /// <summary>Writes a fit.</summary>
    /// <param name="fit">The fit.</param>
    /// <returns>JSON with a final newline.</returns>
    public static string Write(CarFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var document = new JsonObject
        {
            ["format"] = Format,
            ["car"] = fit.Runs[^1].Car.Name,
            ["leftOutError"] = Short(fit.LeftOutError),
            ["leftOutCoverage90"] = Short(fit.LeftOutCoverage),
            ["modelLeavesOver"] = Short(fit.FieldDeviation),
            ["ending"] = fit.Ending.ToString(),
            ["maps"] = fit.Evaluations,
            ["remarks"] = new JsonArray([.. fit.Remarks.Select(r => (JsonNode)r)]),
            ["unknowns"] = new JsonArray([.. fit.Unknowns.Select(Of)]),
            ["points"] = new JsonArray([.. fit.Points.Select(p => Of(p, fit.Runs[p.Run].Name))]),
            ["runs"] = new JsonArray([.. fit.Runs.Select(r => (JsonNode)new JsonObject
            {
                ["name"] = r.Name,
                ["car"] = r.Car.Document,
                ["points"] = JsonSerializer.SerializeToNode(r.Points, Form),
            })]),
        };
        return document.ToJsonString(Form) + "\n";
    }

    /// <summary>Reads the runs of a fit; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The runs, or what is wrong.</returns>
    public static (IReadOnlyList<CalibrationRun>? Runs, string? Fault) Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            if (JsonNode.Parse(json) is not JsonObject root || root["format"]?.ToString() is not Format || root["runs"] is not JsonArray { Count: > 0 and <= MostRuns } runs)
            {
                return (null, $"This is no fit: one is written by 'tickover fit CAR LOG -o FILE' and begins with \"format\": \"{Format}\".");
            }

            var read = runs.Select(Run).ToList();
            var damaged = read.IndexOf(null);
            return damaged < 0
                ? ([.. read.OfType<CalibrationRun>()], null)
                : (null, string.Create(CultureInfo.InvariantCulture, $"Run {damaged + 1} of the fit is damaged. Make the fit again from the log."));
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            return (null, "This fit cannot be read: it is cut short or was changed by hand. Make it again from the log.");
        }
    }

    private static CalibrationRun? Run(JsonNode? run)
    {
        var car = CarDocument.Read(run?["car"]?.ToString() ?? string.Empty).Car;
        var points = run?["points"]?.Deserialize<List<MixturePoint>>(Form);
        return car is null || points is null || points.Exists(p => !IsSound(p)) ? null : new CalibrationRun(run!["name"]?.ToString() ?? "run", car, points);
    }

    private static JsonObject Of(FittedUnknown unknown) => new()
    {
        ["key"] = unknown.Unknown.Key,
        ["label"] = unknown.Unknown.Label,
        ["acts"] = unknown.Unknown.IsFactor ? "times" : "plus " + unknown.Unknown.Unit,
        ["value"] = Short(unknown.Unknown.Acting(unknown.Value)),
        ["deviation"] = Short(unknown.Deviation),
        ["priorDeviation"] = unknown.Unknown.PriorDeviation,
        ["told"] = unknown.IsTold,
    };

    private static JsonObject Of(FittedPoint point, string run) => new()
    {
        ["run"] = run,
        ["bank"] = point.Point.Bank,
        ["regime"] = point.Point.Regime.ToString(),
        ["speedRpm"] = Short(point.Point.SpeedRpm),
        ["throttleDegrees"] = Short(point.ThrottleDegrees),
        ["lambda"] = Short(point.Point.Lambda),
        ["expectedLambda"] = Short(point.ExpectedLambda),
        ["fittedLambda"] = Short(point.FittedLambda),
        ["weight"] = Short(point.Weight),
        ["leftOutError"] = Short(point.LeftOutError),
        ["leftOutDeviation"] = Short(point.LeftOutDeviation),
    };

    private static bool IsSound(MixturePoint point) =>
        point.SpeedRpm is > 0 and < 30_000 && point.Lambda is > 0.3 and < 5 && point.LambdaSigma is >= 0 and < 1
        && (point.ThrottleDegrees is null || point.ThrottleDegrees is >= -5 and <= 90);

    private static double Short(double value) => double.IsFinite(value) ? Math.Round(value, 5) : 0;
}
