using Tickover.Practice;
using Tickover.Practice.Virtual;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>The practice engine against what the trade holds of idling engines: it shares no code with the balancing it is used to judge, so it is checked by itself.</summary>
public static class PracticeChecks
{
    private const string Trade = "Idle geometry as the trade's texts give it, derived from choked flow";
    private const string Idling = "Swept volume, speed and a filling of 0.25 to 0.35, as the trade reckons idle air";
    private const int Seeds = 60;

    public static CheckGroup Group { get; } = new("Practice engine", [.. Plates(), .. Idle()]);

    private static IEnumerable<OutsideCheck> Plates()
    {
        const string subject = "40 mm plate closing at 10°";
        return
        [
            Check("air at 1 bar and 25 °C, discharge 0.75", "gap for 4 kg/h", 6.3, () => 4 / ThrottlePlate.ChokedAirPerSquareMillimetre, "mm²", 0.01),
            Check(subject, "air gained by 0.16° at 4 kg/h, 370 cm³ a barrel at 1,000 rpm", 0.10, () => Gained(4, 370, 1000), "1", 0.15),
            Check(subject, "air gained by 0.16° at 20 kg/h, 540 cm³ a barrel at 3,000 rpm", 0.02, () => Gained(20, 540, 3000), "1", 0.35, "The trade carries the slope at the seat up to 20 kg/h; the plate's own slope is steeper there."),
        ];
    }

    // common practice gives a range; the middle is held to, with half the range allowed
    private static IEnumerable<OutsideCheck> Idle() =>
    [
        Check("330 cm³ a barrel at 900 rpm, 60 engines as they come in", "mean air, of 2.7 to 3.7", 3.2, () => IdleAir(330, 900), "kg/h", 0.5 / 3.2) with { Source = Idling, Kind = SourceKind.CommonPractice },
        Check("370 cm³ a barrel at 1,000 rpm, 60 engines as they come in", "mean air, of 3.3 to 4.7", 4.0, () => IdleAir(370, 1000), "kg/h", 0.7 / 4) with { Source = Idling, Kind = SourceKind.CommonPractice },
    ];

    private static OutsideCheck Check(string subject, string quantity, double published, Func<double> ours, string unit, double tolerance, string note = "") => new()
    {
        Subject = subject,
        Quantity = quantity,
        Published = published,
        Ours = ours,
        Source = Trade,
        Kind = SourceKind.Derived,
        Unit = unit,
        Tolerance = tolerance,
        Note = note,
    };

    private static double Gained(double air, double sweptCubicCentimetres, double rpm)
    {
        const double Bore = 40;
        const double Closed = 10;
        var capacity = VirtualEngine.CapacityPerCubicCentimetre * sweptCubicCentimetres * rpm;
        double Air(double area) => Filling.OwnRunner.Filled(area * ThrottlePlate.ChokedAirPerSquareMillimetre / capacity) * capacity;
        var at = Filling.OwnRunner.GapFor(air / capacity) * capacity / ThrottlePlate.ChokedAirPerSquareMillimetre;
        return (Air(ThrottlePlate.Area(Bore, Closed, ThrottlePlate.Opening(Bore, Closed, at) + 0.16)) / Air(at)) - 1;
    }

    private static double IdleAir(double sweptCubicCentimetres, double rpm)
    {
        var carburettors = Enumerable.Range(1, 4).Select(c => $"{{ \"barrels\": [[{(2 * c) - 1}], [{2 * c}]], \"bank\": {(c + 1) / 2} }}");
        var (plan, _) = PlanDocument.Read(FormattableString.Invariant(
            $"{{ \"format\": \"{PlanDocument.Format}\", \"name\": \"eight\", \"layout\": \"two banks\", \"cylinders\": 8, \"sweptVolume\": {sweptCubicCentimetres}, \"throttleBore\": 40, \"closedAngle\": 10, \"idleSpeed\": {rpm}, \"bypass\": true, \"carburettors\": [{string.Join(", ", carburettors)}] }}"));
        return Enumerable.Range(0, Seeds).Average(seed =>
        {
            var truth = PracticeEngine.Start(plan!, seed, 0).Truth();
            return truth.IdleAir.Average() * rpm / truth.IdleRpm;
        });
    }
}
