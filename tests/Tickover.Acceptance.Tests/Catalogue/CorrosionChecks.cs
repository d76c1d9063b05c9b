using Tickover.Physics.Walls;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Faraday's law, equivalent weights, metals in contact, the deepest pit, growth.</summary>
public static class CorrosionChecks
{
    private const string Guide = "ASTM G102, practice for calculation of corrosion rates, constant 3.27·10⁻³ mm g/(µA cm year)";
    private const string Table = "ASTM G102, table 1 of equivalent weights";
    private const string Anodes = "K. M. Gupta, example 17.4, p. 526: magnesium for 20 mA/m² over 15 years";
    private const string Coupon = "ASTM G1, constant 87.6 for mm/year from mg, g/cm³, cm² and h";
    private const string Oxygen = "Limiting current of oxygen in still water through 0.5 mm, as textbooks of corrosion give it";
    private const string Matrix = "A maker's matrix after MIL-F-14072: differences of metals in contact";
    private const string Practice = "Practice beside MIL-STD-889: 0.15 V out of doors and in salt, 0.25 V ordinary, 0.50 V controlled";
    private const string Sea = "S. Coles, An Introduction to Statistical Modeling of Extreme Values, 2001, § 3.4.1, Port Pirie, Gumbel fit";
    private const string SeaAgain = "Port Pirie sea levels of Coles 2001, the same fit worked out independently";
    private const string Patches = "Eight patches of invented depths, worked out independently";
    private const string CubeRoot = "Cube-root law of aluminium in fresh water: twice the wall lasts eight times as long (textbook problem)";
    private const double Microampere = 0.01; // a square centimetre, A/m²

    private static readonly double[] PortPirie =
    [
        4.03, 3.83, 3.65, 3.88, 4.01, 4.08, 4.18, 3.80, 4.36, 3.96, 3.98, 4.69, 3.85, 3.96, 3.85, 3.93, 3.75, 3.63, 3.57, 4.25, 3.97, 4.05,
        4.24, 4.22, 3.73, 4.37, 4.06, 3.71, 3.96, 4.06, 4.55, 3.79, 3.89, 4.11, 3.85, 3.86, 3.86, 4.21, 4.01, 4.11, 4.24, 3.96, 4.21, 3.74,
        3.85, 3.88, 3.66, 4.11, 3.71, 4.18, 3.90, 3.78, 3.91, 3.72, 4.00, 3.66, 3.62, 4.33, 4.55, 3.75, 4.08, 3.90, 3.88, 3.94, 4.33,
    ];

    private static readonly double[] Eight = [0.21, 0.26, 0.29, 0.33, 0.36, 0.42, 0.47, 0.58];

    public static CheckGroup Group { get; } = new("Corrosion", [.. Rates(), .. Weights(), .. Couples(), .. SeaLevels(), .. Pits(), .. Growth()]);

    private static OutsideCheck Of(string subject, string quantity, string source, SourceKind kind, (double Value, string Unit) published, Func<double> ours, double tolerance = OutsideCheck.TextbookTolerance, string note = "") => new()
    {
        Subject = subject,
        Quantity = quantity,
        Source = source,
        Kind = kind,
        Published = published.Value,
        Unit = published.Unit,
        Ours = ours,
        Tolerance = tolerance,
        Note = note,
    };

    private static IEnumerable<OutsideCheck> Rates()
    {
        static double Rate(double weight, double density) => 1e6 * WallsConstants.SecondsPerYear * Faraday.PenetrationRate(Microampere, weight * 1e-3, density);

        const string one = "1 µA/cm²";
        return
        [
            Of($"{one} at an equivalent weight of 1 g/mol and 1 g/cm³", "penetration", Guide, SourceKind.FromMemory, (3.27, "µm/year"), () => Rate(1, 1000), 0.001),
            Of($"{one} on iron", "penetration", "M. G. Fontana, Corrosion Engineering, 3rd ed.: 1 µA/cm² is 11.6 µm of iron a year", SourceKind.FromMemory, (11.6, "µm/year"), () => Rate(27.922, 7870), 0.002),
            Of($"{one} on aluminium", "penetration", "Faraday's law, worked out independently", SourceKind.Derived, (10.893, "µm/year"), () => Rate(8.994, 2700), 0.001),
            Of($"{one} on zinc", "penetration", "Faraday's law, worked out independently", SourceKind.Derived, (14.971, "µm/year"), () => Rate(32.690, 7140), 0.001),
            Of("magnesium at 20 mA/m² for 15 years", "mass used up", Anodes, SourceKind.Published, (1.191, "kg/m²"), () => Faraday.MassLoss(0.020, 15 * WallsConstants.SecondsPerYear, 12.152e-3), 0.005),
            Of("coupon losing 1 mg from 1 cm² at 1 g/cm³ in 1 h", "rate", Coupon, SourceKind.Published, (87.6, "mm/year"), () => 1000.0 * 8760 * 3600 * Faraday.RateFromMass(1e-6, 1000, 1e-4, 3600), 1e-6),
            Of("oxygen through 0.5 mm of still water", "limiting current", Oxygen, SourceKind.FromMemory, (40, "µA/cm²"), () => 100 * Faraday.OxygenLimit(0.5e-3), 0.05),
        ];
    }

    private static IEnumerable<OutsideCheck> Weights()
    {
        static double Weight(params AlloyElement[] elements) => 1000 * EquivalentWeight.Of(elements);

        AlloyElement aluminium(double part) => new(part, 26.981538e-3, 3);
        return
        [
            Of("aluminium alone", "equivalent weight", Table, SourceKind.FromMemory, (8.99, "g/mol"), () => Weight(aluminium(1)), 0.001),
            Of("iron alone", "equivalent weight", Table, SourceKind.FromMemory, (27.92, "g/mol"), () => Weight(new AlloyElement(1, 55.845e-3, 2)), 0.001),
            Of("zinc alone", "equivalent weight", Table, SourceKind.FromMemory, (32.69, "g/mol"), () => Weight(new AlloyElement(1, 65.38e-3, 2)), 0.001),
            Of("stainless with 19 % chromium and 9.25 % nickel", "equivalent weight", Table, SourceKind.FromMemory, (25.12, "g/mol"), () => Weight(new(0.19, 51.9961e-3, 3), new(0.0925, 58.6934e-3, 2), new(0.7175, 55.845e-3, 2)), 0.001),
            Of("aluminium with 2.5 % magnesium (5052)", "equivalent weight", Table, SourceKind.FromMemory, (9.05, "g/mol"), () => Weight(aluminium(0.975), new AlloyElement(0.025, 24.305e-3, 2)), 0.001),
            .. new[] { (Metal.Steel, 27.92), (Metal.Stainless, 25.12), (Metal.Aluminium, 9.01) }
                .Select(m => Of($"{m.Item1} in our table", "equivalent weight", Table, SourceKind.FromMemory, (m.Item2, "g/mol"), () => 1000 * MetalTable.Of(m.Item1).EquivalentWeightKilogramsPerMole, 0.001)),
        ];
    }

    private static IEnumerable<OutsideCheck> Couples()
    {
        static double Difference(Metal one, Metal other) => Math.Abs(MetalTable.Of(one).SurfaceIndexVolts - MetalTable.Of(other).SurfaceIndexVolts);

        return
        [
            Of("aluminium on 18 % stainless", "difference of anodic index", "Table of anodic indices after MIL-STD-889 (0.90 less 0.50)", SourceKind.Published, (0.40, "V"), () => Difference(Metal.Aluminium, Metal.Stainless), 1e-9),
            Of("steel on brass", "difference of anodic index", "Table of anodic indices after MIL-STD-889 (0.85 less 0.40)", SourceKind.FromMemory, (0.45, "V"), () => Difference(Metal.Steel, Metal.Brass), 1e-9),
            Of("aluminium with copper on nickel", "difference of anodic index", Matrix, SourceKind.Published, (0.45, "V"), () => Difference(Metal.AluminiumCopper, Metal.Nickel), 1e-9),
            Of("aluminium with copper on 18 % stainless", "difference of anodic index", Matrix, SourceKind.Published, (0.25, "V"), () => Difference(Metal.AluminiumCopper, Metal.Stainless), 1e-9),
            Of("two metals out of doors", "difference let pass", Practice, SourceKind.Published, (0.15, "V"), () => GalvanicCouple.Limit(WetSurroundings.Harsh), 1e-12),
            Of("two metals in ordinary surroundings", "difference let pass", Practice, SourceKind.Published, (0.25, "V"), () => GalvanicCouple.Limit(WetSurroundings.Normal), 1e-12),
            Of("two metals kept dry", "difference let pass", Practice, SourceKind.Published, (0.50, "V"), () => GalvanicCouple.Limit(WetSurroundings.Controlled), 1e-12),
        ];
    }

    private static IEnumerable<OutsideCheck> SeaLevels()
    {
        static Gumbel Likeliest() => GumbelEstimate.MaximumLikelihood(PortPirie)!.Value;

        const string subject = "65 yearly highest sea levels";
        return
        [
            Of(subject, "location by greatest likelihood", Sea, SourceKind.FromMemory, (3.87, "m"), () => Likeliest().LocationMetres, 0.001),
            Of(subject, "scale by greatest likelihood", Sea, SourceKind.FromMemory, (0.195, "m"), () => Likeliest().ScaleMetres, 0.002),
            Of(subject, "log-likelihood", Sea, SourceKind.FromMemory, (4.22, "1"), () => Likeliest().LogLikelihood(PortPirie), 0.001),
            Of(subject, "location by moments", SeaAgain, SourceKind.Derived, (3.872372, "m"), () => GumbelEstimate.Moments(PortPirie)!.Value.LocationMetres, 1e-6),
            Of(subject, "scale by moments", SeaAgain, SourceKind.Derived, (0.187527, "m"), () => GumbelEstimate.Moments(PortPirie)!.Value.ScaleMetres, 1e-5),
            Of(subject, "location by weighted moments", SeaAgain, SourceKind.Derived, (3.868491, "m"), () => GumbelEstimate.WeightedMoments(PortPirie)!.Value.LocationMetres, 1e-6),
            Of(subject, "scale by weighted moments", SeaAgain, SourceKind.Derived, (0.194251, "m"), () => GumbelEstimate.WeightedMoments(PortPirie)!.Value.ScaleMetres, 1e-5),
            Of(subject, "level of 100 years", SeaAgain, SourceKind.Derived, (4.7660, "m"), () => Likeliest().Depth(0.99, 1), 1e-4),
        ];
    }

    private static IEnumerable<OutsideCheck> Pits()
    {
        static Gumbel Likeliest() => GumbelEstimate.MaximumLikelihood(Eight)!.Value;

        const string subject = "deepest pits of eight patches, 0.21 to 0.58 mm";
        return
        [
            Of(subject, "scale by moments", Patches, SourceKind.Derived, (0.094211, "mm"), () => GumbelEstimate.Moments(Eight)!.Value.ScaleMetres, 1e-5),
            Of(subject, "scale by weighted moments", Patches, SourceKind.Derived, (0.104595, "mm"), () => GumbelEstimate.WeightedMoments(Eight)!.Value.ScaleMetres, 1e-5),
            Of(subject, "location by greatest likelihood", Patches, SourceKind.Derived, (0.311654, "mm"), () => Likeliest().LocationMetres, 1e-5),
            Of(subject, "return level of 50 patches", Patches, SourceKind.Derived, (0.6704, "mm"), () => Likeliest().CommonestDepth(50), 1e-4),
            Of(subject, "chance that the deepest of 50 is under 1 mm", Patches, SourceKind.Derived, (0.9729, "1"), () => Likeliest().Below(1.0, 50), 1e-4, "the one likeliest pair; with what eight readings leave open it is less"),
        ];
    }

    private static IEnumerable<OutsideCheck> Growth() =>
    [
        Of("wall twice as thick, pits by the cube root", "life", CubeRoot, SourceKind.Published, (8, "1"), () => GrowthRange.AgeWhenThrough(2, 1, 1.0 / 3, 1), 1e-9),
        Of("0.5 mm at one year in 1.2 mm, cube root", "age when through", "Power law, worked out independently", SourceKind.Derived, (13.82, "years"), () => GrowthRange.AgeWhenThrough(1.2, 0.5, 1.0 / 3, 1), 0.001),
        Of("0.5 mm at one year in 1.2 mm, square root", "age when through", "Power law, worked out independently", SourceKind.Derived, (5.76, "years"), () => GrowthRange.AgeWhenThrough(1.2, 0.5, 0.5, 1), 0.001),
    ];
}
