using static Tickover.Workshop.Visits.Measures.SubStep;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>First start and the rounds of balancing.</summary>
internal static class BalanceMeasures
{
    private const string MeterHint = "Dial airflow meter with its adaptor and seal; blip first, let it settle, the same order each round.";
    private const string RaisedLimit = "±5 % from barrel to barrel, ±3 % in good hands";

    public static IReadOnlyList<MeasureDefinition> Rows { get; } =
    [
        Row.Of(Quantity.Duration, "leakWatch", "Leak watch, pump only", PlaceKind.Car, FirstStart).In("min", 0, "min", 0).Usually(1, 60).With("Every joint, second person with the extinguisher.")
            .Accept("5 min without a weep", Origins.Practice).AtLeast(5),
        Row.Of(Quantity.Duration, "timeToFire", "Cranking until it fired", PlaceKind.Car, FirstStart).Usually(0, 60).Running(),
        Row.Of(Quantity.Pressure, "oilPressure", "Oil pressure", PlaceKind.Car, FirstStart, WarmThrough).In("bar", 1, "psi", 0).Usually(0.5, 7).Setting().Running(),
        Row.Of(Quantity.EngineSpeed, "idleSpeed", "Idle speed", PlaceKind.Car, Baseline, FirstStart, BarrelBalance, IdleMixture, FollowUp).Usually(500, 1500).Setting().Running().With("Tachometer of its own, not the dashboard's."),
        Row.Of(Quantity.Airflow, "idleAirflow", "Air at idle", PlaceKind.Barrel, Baseline, BarrelBalance, Locked, FollowUp).Usually(2, 6).Round().With(MeterHint)
            .Accept("±0.5 kg/h or ±10 % from barrel to barrel; ±0.25 kg/h or ±5 % in good hands", Origins.Practice).OffMean(0.5, 0.10),
        Row.Of(Quantity.Airflow, "airflow1500", "Air at 1,500 rpm", PlaceKind.Barrel, BarrelBalance, FollowUp).Usually(3, 16).Round().With(MeterHint + " Hold by the cross-shaft.").Accept(RaisedLimit, Origins.Practice).OffMean(null, 0.05),
        Row.Of(Quantity.Airflow, "airflow2500", "Air at 2,500 rpm", PlaceKind.Barrel, Baseline, BarrelBalance, FollowUp).Usually(4, 30).Round().With(MeterHint + " Hold by the cross-shaft.").Accept(RaisedLimit, Origins.Practice).OffMean(null, 0.05),
        Row.Of(Quantity.Depression, "idleDepression", "Depression at idle", PlaceKind.Cylinder, Baseline, BarrelBalance, FollowUp).Usually(10, 80).Round().With("Column or gauges, damped alike, mutually zeroed. More is more shut.")
            .Accept("2.7 to 4 kPa (20 to 30 mmHg) apart on a motorcycle four; 1.3 to 2 kPa is good", Origins.Practice).Apart(4, null),
        Row.Of(Quantity.Depression, "raisedDepression", "Depression at raised speed", PlaceKind.Cylinder, BarrelBalance).Usually(10, 80).Round().With("Some 3,000 rpm; write the rpm with it."),
        Row.Of(Quantity.Airflow, "carburettorAirflow", "Air at idle, whole carburettor", PlaceKind.Carburettor, Baseline, BarrelBalance, FollowUp).Usually(4, 15).Round().With("Constant-depression carburettors; the meter must not choke the piston.")
            .Accept("0.5 kg/h apart at idle", Origins.Practice).Apart(0.5, null),
        Row.Of(Quantity.Temperature, "airTemperature", "Air temperature", PlaceKind.Car, BarrelBalance, RoadTest).Usually(-10, 45).With("In the shade, where the engine breathes."),
        Row.Of(Quantity.AirPressure, "airPressure", "Air pressure", PlaceKind.Car, BarrelBalance, RoadTest).Usually(750, 1050).With("Of this place, not reduced to sea level."),
        Row.Choice("tamperMark", "Paint mark", PlaceKind.Carburettor, [Locked, FollowUp], "set", "unmoved", "moved").Setting().With("It shows movement and does not prevent it."),
    ];
}
