using System.Globalization;
using System.Text;
using Tickover.Physics.Air;
using Tickover.Physics.Breathing;
using Tickover.Physics.Fuels;
using Tickover.Physics.Metering;

namespace Tickover.Bench.Peer;

/// <summary>Writes a car and its operating points as plain numbers for the C program; names and order as in bench/peer/peer.h.</summary>
internal sealed class PeerInput
{
    private readonly StringBuilder _text = new();

    internal static string Write(EngineSpec engine, AmbientAir ambient, FuelProperties fuel, IEnumerable<OperatingGrid> grids, PeerTolerances tolerances)
    {
        var input = new PeerInput();
        input.Gases(ambient, fuel);
        input.Engine(engine);
        input.AirWay(engine.Barrels[0].AirWay);
        input.Circuits(engine.Barrels[0]);
        input.Line(
            "tolerance", tolerances.Cycle, tolerances.Level, tolerances.Flow, tolerances.Relative, tolerances.FuelRelative);
        input.Points(grids);
        return input._text.ToString();
    }

    private void Gases(AmbientAir ambient, FuelProperties fuel)
    {
        Line("ambient", ambient.PressurePascals, ambient.TemperatureKelvin, ambient.DensityKilogramsPerCubicMetre);
        Line("fuel", fuel.DensityKilogramsPerCubicMetre, fuel.ViscosityPascalSeconds);
        Line("gas", GasModel.FreshGamma, GasModel.BurntGamma, GasModel.ReferenceTemperatureKelvin, GasModel.RegularisationRatio);
    }

    private void Engine(EngineSpec e)
    {
        Line("cylinder", e.Cylinder.BoreMetres, e.Cylinder.StrokeMetres, e.Cylinder.RodLengthMetres, e.Cylinder.CompressionRatio);
        Valve("inlet", e.IntakeValve);
        Valve("exhaust", e.ExhaustValve);
        var i = e.Intake;
        Line(
            "intake", i.TrumpetLengthMetres, i.BarrelLengthMetres, i.RunnerLengthMetres, i.RunnerDiameterMetres, i.PortVolumeCubicMetres,
            i.RunnerLossCoefficient, i.WallTemperatureKelvin, i.HeatingEffectiveness, i.EvaporationCoolingKelvin);
        Line("tract", e.Exhaust.BackPressureCoefficient, e.Exhaust.GasTemperatureKelvin);
        var c = e.Combustion;
        Line("burn", c.StartDegrees, c.DurationDegrees, c.HeatPerAirJoulesPerKilogram, c.WallTemperatureKelvin);
    }

    private void Valve(string name, ValveTiming v) => Line(
        name, v.Count, v.HeadDiameterMetres, v.MaximumLiftMetres, v.OpensDegrees, v.ClosesDegrees, v.DischargeCoefficient, v.ThroatToHeadRatio);

    private void AirWay(BarrelAirWay w) => Line(
        "way", w.ThrottleBoreMetres, w.ClosedAngleRadians, w.SpindleDiameterMetres, w.ChokeDiameterMetres, w.ChokeObstruction,
        w.ChokeDischargeCoefficient, w.ChokeLossCoefficient, w.AuxiliaryVenturiGain, w.ReverseSignalFactor, w.PlateDischargeCoefficient,
        w.BypassAreaSquareMetres);

    private void Circuits(BarrelSpec barrel)
    {
        Line("float", barrel.Float.LipHeightMetres, barrel.Float.VentPressureRisePascals);
        var m = barrel.Main;
        Line(
            "main", m.JetDiameterMetres, m.JetLengthRatio, m.AirCorrectorDiameterMetres, m.AirDischargeCoefficient, m.WellAreaSquareMetres,
            m.WellDepthMetres, m.NozzleDiameterMetres, m.NozzleDischargeCoefficient, m.Slip, m.ColumnLengthMetres, m.ColumnDiameterMetres);
        foreach (var row in m.HoleRows)
        {
            Line("row", row.DepthMetres, row.Count, row.DiameterMetres);
        }

        var i = barrel.Idle;
        Line(
            "idle", i.JetDiameterMetres, i.JetLengthRatio, i.BleedDiameterMetres, i.AirDischargeCoefficient, i.LiftMetres, i.MainWellShare,
            i.ScrewSeatDiameterMetres, i.ScrewHalfAngleRadians, i.ScrewPitchMetres, i.ScrewTurns, i.OutletDischargeCoefficient);
        foreach (var hole in i.ProgressionHoles)
        {
            Line("hole", hole.PositionMetres, hole.DiameterMetres);
        }

        var p = barrel.Pump;
        Line("pump", p?.JetDiameterMetres ?? 0, p?.LiftMetres ?? 0, p?.CheckOpeningPascals ?? 0, p?.BleedDiameterMetres ?? 0);
    }

    // The third number is the point whose periodic state this one starts from: the speed before, as the product's solver does.
    private void Points(IEnumerable<OperatingGrid> grids)
    {
        var count = 0;
        foreach (var grid in grids)
        {
            var first = count;
            for (var i = 0; i < grid.SpeedsRpm.Count; i++)
            {
                foreach (var degrees in grid.ThrottleDegrees)
                {
                    var before = count - grid.ThrottleDegrees.Count;
                    Line("point", grid.SpeedsRpm[i], degrees, before >= first ? before : -1);
                    count++;
                }
            }
        }
    }

    private void Line(string name, params double[] values)
    {
        _text.Append(name);
        foreach (var value in values)
        {
            _text.Append(' ').Append(value.ToString("R", CultureInfo.InvariantCulture));
        }

        _text.Append('\n');
    }
}
