using Tickover.Physics.Air;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply.Finding;

namespace Tickover.Workshop.Supply;

/// <summary>Works out whether a fuel supply carries its engine, and what readings of it say.</summary>
public static class SupplyAnalyst
{
    /// <summary>Bore of the hose into the measuring can, m.</summary>
    public const double CanBoreMetres = 0.006;

    /// <summary>Works it all out.</summary>
    /// <param name="supply">The supply.</param>
    /// <returns>The analysis.</returns>
    public static SupplyAnalysis Of(FuelSupply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        var cases = supply.Cases.Select(setting => Worked(supply, setting)).ToList();
        var analysis = new SupplyAnalysis
        {
            Supply = supply,
            Cases = cases,
            Findings = [],
            OpenFlow = supply.Line.Pump is null ? null : OpenFlow(supply),
            Diagnosis = supply.Readings.Count > 0 && supply.Line.Pump is not null ? Diagnose(supply, supply.Readings) : null,
        };
        return analysis with { Findings = [.. FlowFindings.Of(analysis), .. VapourFindings.Of(analysis), .. ChamberFindings.Of(analysis), .. FilterFindings.Of(analysis)] };
    }

    /// <summary>What readings of a supply point to.</summary>
    /// <param name="supply">The supply as it should be.</param>
    /// <param name="readings">What was read, in SI.</param>
    /// <returns>The causes and the next look; null where the line has no pump.</returns>
    public static SupplyDiagnosis? Diagnose(FuelSupply supply, IReadOnlyDictionary<SupplyReadingKind, double> readings)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return supply.Line.Pump is null ? null : SupplyDiagnostician.Diagnose(Test(supply), readings);
    }

    /// <summary>The line with the duty of a case put on it.</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="setting">The case.</param>
    /// <returns>The duty.</returns>
    internal static SupplyDuty Duty(FuelSupply supply, SupplyCaseSetting setting)
    {
        var total = setting.Load is { } load ? load * supply.Engine.FullLoadKilogramsPerSecond : supply.Engine.IdleKilogramsPerSecond;
        var valves = supply.Line.Valves.ToList();
        return new SupplyDuty
        {
            Name = SupplyWords.Case(setting.Kind),
            Fuel = supply.Fuel,
            DemandKilogramsPerSecond = valves.ToDictionary(valve => valve.Name, valve => total * supply.Shares.GetValueOrDefault(valve.Name, 1.0 / valves.Count), StringComparer.Ordinal),
            AirPascals = StandardAtmosphere.PressurePascals(setting.AltitudeMetres),
            TankKelvin = setting.TankKelvin,
            ChassisKelvin = setting.FloorKelvin,
            BonnetKelvin = setting.BonnetKelvin,
            EngineRpm = setting.Rpm,
            PumpVolts = setting.Volts,
        };
    }

    private static SupplyCase Worked(FuelSupply supply, SupplyCaseSetting setting)
    {
        var duty = Duty(supply, setting);
        return new SupplyCase(setting, SupplySolver.Solve(supply.Line, duty), SupplyMargin.Of(supply.Line, duty));
    }

    private static double OpenFlow(FuelSupply supply)
    {
        var last = supply.Line.Valves.Last().After;
        var opened = supply.Line.OpenedAfter(last, CanBoreMetres, supply.Line.WayTo(last)[^1].OutletHeightMetres);
        var duty = Duty(supply, supply.Cases.First(setting => setting.Kind == SupplyCaseKind.FullLoad)) with { DemandKilogramsPerSecond = new Dictionary<string, double>(StringComparer.Ordinal) };
        return SupplySolver.Solve(opened, duty).Parts[^1].VolumeFlow;
    }

    // As it stands in the bay: all of one warmth, the pump as it was measured.
    private static SupplyTest Test(FuelSupply supply)
    {
        var idle = supply.Cases.First(setting => setting.Kind == SupplyCaseKind.Idle);
        return new SupplyTest
        {
            Line = supply.Line,
            FilterName = supply.FineFilter,
            CanBoreMetres = CanBoreMetres,
            Duty = Duty(supply, idle with { FloorKelvin = idle.TankKelvin, BonnetKelvin = idle.TankKelvin }) with
            {
                EngineRpm = supply.Line.Pump!.MeasuredRpm,
                PumpVolts = supply.Line.Pump.MeasuredVolts,
            },
        };
    }
}
