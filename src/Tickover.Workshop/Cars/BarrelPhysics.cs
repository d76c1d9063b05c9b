using Tickover.Physics.Metering;

namespace Tickover.Workshop.Cars;

/// <summary>The border between a barrel's figures and the physics' SI specification of it.</summary>
public static class BarrelPhysics
{
    /// <summary>The barrel's air way and fuel circuits.</summary>
    /// <param name="barrel">The barrel.</param>
    /// <returns>The specification in SI; no pump circuit where the pump jet is 0.</returns>
    public static BarrelSpec ToBarrelSpec(this CarBarrel barrel)
    {
        ArgumentNullException.ThrowIfNull(barrel);
        var figures = barrel.Figures;
        return new BarrelSpec
        {
            AirWay = ToAirWay(figures),
            Float = new FloatChamber
            {
                LipHeightMetres = figures.Si("barrel.floatLevel"),
                VentPressureRisePascals = figures.Si("barrel.ventPressureRise"),
            },
            Main = ToMainCircuit(barrel),
            Idle = ToIdleCircuit(barrel),
            Pump = figures.Si("barrel.pumpJet") > 0 ? ToPumpCircuit(figures) : null,
        };
    }

    private static BarrelAirWay ToAirWay(FigureSet figures) => new()
    {
        ThrottleBoreMetres = figures.Si("barrel.throttleBore"),
        ClosedAngleRadians = figures.Si("barrel.closedAngle"),
        SpindleDiameterMetres = figures.Si("barrel.spindleDiameter"),
        ChokeDiameterMetres = figures.Si("barrel.choke"),
        ChokeObstruction = figures.Si("barrel.chokeObstruction"),
        ChokeDischargeCoefficient = figures.Si("barrel.chokeDischarge"),
        ChokeLossCoefficient = figures.Si("barrel.chokeLoss"),
        AuxiliaryVenturiGain = figures.Si("barrel.auxiliaryGain"),
        ReverseSignalFactor = figures.Si("barrel.reverseSignal"),
        PlateDischargeCoefficient = figures.Si("barrel.plateDischarge"),
        BypassAreaSquareMetres = figures.Si("barrel.bypassArea"),
    };

    private static MainCircuit ToMainCircuit(CarBarrel barrel) => new()
    {
        JetDiameterMetres = barrel.Figures.Si("barrel.mainJet"),
        JetLengthRatio = barrel.Figures.Si("barrel.mainJetLengthRatio"),
        AirCorrectorDiameterMetres = barrel.Figures.Si("barrel.airCorrector"),
        AirDischargeCoefficient = barrel.Figures.Si("barrel.mainAirDischarge"),
        HoleRows = [.. barrel.EmulsionHoles.Select(r => new EmulsionHoleRow(r.DepthMetres, r.Count, r.DiameterMetres))],
        WellAreaSquareMetres = barrel.Figures.Si("barrel.wellArea"),
        WellDepthMetres = barrel.Figures.Si("barrel.wellDepth"),
        NozzleDiameterMetres = barrel.Figures.Si("barrel.nozzle"),
        NozzleDischargeCoefficient = barrel.Figures.Si("barrel.nozzleDischarge"),
        Slip = barrel.Figures.Si("barrel.slip"),
        ColumnLengthMetres = barrel.Figures.Si("barrel.columnLength"),
        ColumnDiameterMetres = barrel.Figures.Si("barrel.columnBore"),
    };

    private static IdleCircuit ToIdleCircuit(CarBarrel barrel) => new()
    {
        JetDiameterMetres = barrel.Figures.Si("barrel.idleJet"),
        JetLengthRatio = barrel.Figures.Si("barrel.idleJetLengthRatio"),
        BleedDiameterMetres = barrel.Figures.Si("barrel.idleBleed"),
        AirDischargeCoefficient = barrel.Figures.Si("barrel.idleAirDischarge"),
        LiftMetres = barrel.Figures.Si("barrel.idleLift"),
        MainWellShare = barrel.Figures.Si("barrel.idleFeedShare"),
        ScrewSeatDiameterMetres = barrel.Figures.Si("barrel.screwSeat"),
        ScrewHalfAngleRadians = barrel.Figures.Si("barrel.screwConeAngle") / 2,
        ScrewPitchMetres = barrel.Figures.Si("barrel.screwPitch"),
        ScrewTurns = barrel.Figures.Si("barrel.screwTurns"),
        OutletDischargeCoefficient = barrel.Figures.Si("barrel.outletDischarge"),
        ProgressionHoles = [.. barrel.ProgressionHoles.Select(h => new ProgressionHole(h.PositionMetres, h.DiameterMetres))],
    };

    private static PumpCircuit ToPumpCircuit(FigureSet figures) => new()
    {
        JetDiameterMetres = figures.Si("barrel.pumpJet"),
        LiftMetres = figures.Si("barrel.pumpLift"),
        CheckOpeningPascals = figures.Si("barrel.pumpCheckOpening"),
        BleedDiameterMetres = figures.Si("barrel.pumpBackBleed"),
    };
}
