using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Units as a reading is kept, through the same text a person types.</summary>
public static class UnitChecks
{
    private const string Nist = "NIST Special Publication 811 (2008), appendix B.8";
    private const string Definition = "International yard and pound of 1959, exact";
    private const double Exact = 1e-9;

    public static CheckGroup Group { get; } = new("Units of readings", [.. Vacuum(), .. Exactly(), .. Printed()]);

    // The conversions workshop tables of depression print, with their own digits.
    private static IEnumerable<OutsideCheck> Vacuum()
    {
        const string Table = "conversion line of workshop vacuum tables";
        const double fourDigits = 2e-4;
        const double threeDigits = 2e-3;
        return
        [
            Row("idleDepression", "1 inHg", "kPa", 3.386, 1e3, Table, SourceKind.CommonPractice, fourDigits),
            Row("idleDepression", "1 inHg", "mmHg", 25.4, MillimetreOfMercury, Table, SourceKind.CommonPractice, fourDigits),
            Row("idleDepression", "1 inHg", "mbar", 33.9, 100, Table, SourceKind.CommonPractice, threeDigits),
            Row("idleDepression", "1 cmHg", "kPa", 1.333, 1e3, Table, SourceKind.CommonPractice, 3e-4),
            Row("idleDepression", "1 kPa", "mmHg", 7.50, MillimetreOfMercury, Table, SourceKind.CommonPractice, threeDigits),
            Row("idleDepression", "1 kPa", "inHg", 0.295, InchOfMercury, Table, SourceKind.CommonPractice, threeDigits),
            Row("idleDepression", "1 kPa", "mmH₂O", 102, MillimetreOfWater, Table, SourceKind.CommonPractice, threeDigits),
        ];
    }

    private static IEnumerable<OutsideCheck> Exactly() =>
    [
        Row("choke", "1 in", "mm", 25.4, 1e-3, Definition, SourceKind.FromMemory, Exact),
        Row("mainJet", "135", "mm", 1.35, 1e-3, "jets numbered in 1/100 mm", SourceKind.CommonPractice, Exact),
        Row("roadDistance", "1 mile", "m", 1609.344, 1, Definition, SourceKind.FromMemory, Exact),
        Row("tankMass", "1 lb", "kg", 0.45359237, 1, Definition, SourceKind.FromMemory, Exact),
        Row("drained", "1 gal", "L", 4.54609, 1e-3, "Units of Measurement Regulations 1995 (UK), gallon", SourceKind.FromMemory, Exact),
        Row("drained", "1 US gal", "L", 3.785411784, 1e-3, "U.S. gallon of 231 cubic inches, exact", SourceKind.FromMemory, Exact),
        Row("oilTemperature", "212 °F", "K", 373.15, 1, "Fahrenheit and Celsius scales, boiling point", SourceKind.FromMemory, Exact),
    ];

    private static IEnumerable<OutsideCheck> Printed()
    {
        const double sevenDigits = 1e-6;
        return
        [
            Row("idleDepression", "1 inHg", "Pa", 3386.389, 1, Nist + ", inch of mercury, conventional", SourceKind.FromMemory, sevenDigits),
            Row("idleDepression", "1 mmHg", "Pa", 133.3224, 1, Nist + ", millimetre of mercury, conventional", SourceKind.FromMemory, sevenDigits),
            Row("suction", "1 mmH₂O", "Pa", 9.80665, 1, Nist + ", millimetre of water, conventional", SourceKind.FromMemory, sevenDigits),
            Row("suction", "1 inH₂O", "Pa", 249.0889, 1, Nist + ", inch of water, conventional", SourceKind.FromMemory, sevenDigits),
            Row("fuelPressure", "1 psi", "Pa", 6894.757, 1, Nist + ", pound-force per square inch", SourceKind.FromMemory, sevenDigits),
            Row("springPull", "1 lbf", "N", 4.448222, 1, Nist + ", pound-force", SourceKind.FromMemory, sevenDigits),
            Row("baseTorque", "1 lbf ft", "N m", 1.355818, 1, Nist + ", pound-force foot", SourceKind.FromMemory, sevenDigits),
            Row("idleAirflow", "1 lb/h", "kg/s", 1.259979e-4, 1, Nist + ", pound per hour", SourceKind.FromMemory, sevenDigits),
            Row("idleSpeed", "1 rpm", "rad/s", 0.1047198, 1, Nist + ", revolution per minute", SourceKind.FromMemory, sevenDigits),
        ];
    }

    // Conventional columns: mercury of 13 595.1 kg/m³ and water of 1000 kg/m³ under 9.80665 m/s².
    private const double MillimetreOfMercury = 13.5951 * 9.80665;
    private const double InchOfMercury = 25.4 * MillimetreOfMercury;
    private const double MillimetreOfWater = 9.80665;

    private static OutsideCheck Row(string measure, string typed, string unit, double published, double unitInSi, string source, SourceKind kind, double tolerance) => new()
    {
        Subject = typed,
        Quantity = $"kept, in {unit}",
        Unit = unit,
        Published = published,
        Ours = () => MeasureText.Read(MeasureCatalogue.Find(measure)!, typed, UnitChoice.Metric).Si!.Value / unitInSi,
        Source = source,
        Kind = kind,
        Tolerance = tolerance,
    };
}
