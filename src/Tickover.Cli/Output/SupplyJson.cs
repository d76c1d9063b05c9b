using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;

namespace Tickover.Cli.Output;

/// <summary>A supply's analysis as JSON.</summary>
internal static class SupplyJson
{
    private const int Digits = 4;

    /// <summary>Writes the document.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Text(SupplyAnalysis analysis) => JsonSerializer.Serialize(Of(analysis), CommandJson.Readable.SupplyReport) + Environment.NewLine;

    private static SupplyReport Of(SupplyAnalysis a) => new()
    {
        Supply = a.Supply.Name,
        Carries = a.Carries,
        Verdict = a.Verdict,
        Demand = a.Supply.Engine.Origin,
        IdleDemand = a.Supply.Engine.IdleOrigin,
        DemandWorking = [.. a.Supply.Engine.Working.Select(step => new SupplyReportStep(step.Title, step.NumbersIn, step.Answer, step.Note))],
        Fuel = a.Supply.FuelName,
        Cases = [.. a.Cases.Select(Case)],
        Findings = [.. a.Findings.Select(f => new SupplyReportFinding(f.Heading, f.Standing.ToString(), f.Margin, f.Words, f.Next))],
        OpenFlowLitresPerMinute = a.OpenFlow is { } open ? Round(SupplyUnits.ToLitresMinute(open)) : null,
        Diagnosis = a.Diagnosis is { } diagnosis ? Diagnosis(diagnosis) : null,
        Cautions = SupplyCautions.Lines,
    };

    private static SupplyReportCase Case(SupplyCase one) => new()
    {
        Case = one.Setting.Kind.ToString(),
        CarriesTimes = Round(one.Margin.Factor),
        FirstToStarve = one.Margin.FirstToStarve,
        Ending = one.Point.Ending.ToString(),
        Parts = [.. one.Point.Parts.Select(part => Part(part, one.Point.Duty.AirPascals))],
        Valves = [.. one.Point.Valves.Select(valve => Valve(valve, one.Point.Of(valve.Valve.Name)!.Density))],
    };

    private static SupplyReportPart Part(PartPoint part, double air) => new()
    {
        Name = part.Part.Name,
        Kind = SupplyWords.Kind(part.Part),
        LitresPerHour = Round(SupplyUnits.ToLitresHour(part.VolumeFlow)),
        TakesBar = Bar(part.DropPascals),
        GaugeBar = Bar(part.StaticPascals - air),
        AboveBoilingBar = Bar(part.VapourMarginPascals),
        Celsius = Round(SupplyUnits.ToCelsius(part.OutletKelvin)),
    };

    private static SupplyReportValve Valve(ValvePoint valve, double density) => new()
    {
        Name = valve.Valve.Name,
        WantedLitresPerHour = Round(SupplyUnits.ToLitresHour(valve.DemandKilogramsPerSecond / density)),
        ComesLitresPerHour = Round(SupplyUnits.ToLitresHour(valve.MassFlow / density)),
        PressureBar = Bar(valve.InletGaugePascals),
        FloodsAtBar = Bar(valve.FloodingGaugePascals),
        LevelMillimetres = double.IsFinite(valve.LevelChangeMetres) ? Round(1000 * valve.LevelChangeMetres) : null,
        RunsDrySeconds = double.IsFinite(valve.RunsDrySeconds) ? Round(valve.RunsDrySeconds) : null,
    };

    private static SupplyReportDiagnosis Diagnosis(SupplyDiagnosis diagnosis) => new(
        SupplyCauseWords.Said(diagnosis),
        [.. diagnosis.Causes.Select(cause => new SupplyReportCause(cause.Kind.ToString(), SupplyCauseWords.Cause(cause.Kind), Round(cause.Probability)))],
        Round(diagnosis.Misfit),
        diagnosis.Next is { } next ? SupplyCauseWords.Check(next) : null);

    private static double Bar(double pascals) => Round(SupplyUnits.FromPascals(PressureUnit.Bar, pascals));

    private static double Round(double value) => Math.Round(value, Digits);
}
