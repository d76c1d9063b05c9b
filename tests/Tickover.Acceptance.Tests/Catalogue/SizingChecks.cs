using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Choke and main jet for a whole engine.</summary>
public static class SizingChecks
{
    private const double ReworkedDigits = 1e-3; // cp 1005 there, γ R/(γ-1) = 1004.5 here

    private static readonly SizingCase Ganesan = new()
    {
        SweptVolumeCubicMetres = 1700e-6,
        SpeedRpm = 5000,
        VolumetricEfficiency = 0.75,
        CarburettorCount = 2,
        Upstream = new GasState(1.0e5, 300),
        ThroatSpeedMetresPerSecond = 100,
        AreaCoefficient = 0.80,
        AirFuelRatio = 14,
        FuelDensity = 750,
        LipHeightMetres = 6e-3,
        JetCoefficient = 0.65,
        ObstructionRatio = 1.0 / 3,
        Gravity = Textbook.Gravity,
    };

    private static readonly SizingCase Gupta = Ganesan with
    {
        SweptVolumeCubicMetres = 2000e-6,
        SpeedRpm = 4500,
        Upstream = new GasState(1.013e5, 288),
        AreaCoefficient = 0.85,
        JetCoefficient = 0.66,
        ObstructionRatio = 0.4,
    };

    private static readonly SizingCase Mathur = Gupta with
    {
        SweptVolumeCubicMetres = 1710e-6,
        SpeedRpm = 5400,
        VolumetricEfficiency = 0.70,
        Upstream = new GasState(1.013e5, 300),
        ThroatSpeedMetresPerSecond = 107,
        AirFuelRatio = 13,
    };

    public static CheckGroup Group { get; } = new("Choke and jet for an engine",
    [
        .. Reworked(Ganesan, Sources.Ganesan("8.3"), 30.851, 0.94315, 22.269, 1.2182),
        .. Printed(Gupta, Sources.Gupta("9.2"), 22.89, 1.26),
        .. Reworked(Gupta, Sources.Gupta("9.2"), 34.469, 0.95306, 22.888, 1.2609),
        .. Printed(Mathur, Sources.Mathur("11.6"), 21.7, 1.23),
        .. Reworked(Mathur, Sources.Mathur("11.6"), 31.687, 0.94727, 21.700, 1.2258),
    ]);

    private static IEnumerable<OutsideCheck> Printed(SizingCase example, string source, double choke, double jet) =>
    [
        Row(example, source, SourceKind.Published, "choke diameter", "mm", choke, size => size.ChokeDiameterMetres * 1e3),
        Row(example, source, SourceKind.Published, "jet diameter", "mm", jet, size => size.JetDiameterMetres * 1e3),
    ];

    private static IEnumerable<OutsideCheck> Reworked(SizingCase example, string source, double air, double bar, double choke, double jet)
    {
        var words = Sources.Reworked(source);
        return
        [
            Row(example, words, SourceKind.Derived, "air flow", "g/s", air, size => size.AirFlowKilogramsPerSecond * 1e3),
            Row(example, words, SourceKind.Derived, "throat pressure", "bar", bar, size => size.ThroatPressurePascals / 1e5),
            Row(example, words, SourceKind.Derived, "choke diameter", "mm", choke, size => size.ChokeDiameterMetres * 1e3),
            Row(example, words, SourceKind.Derived, "jet diameter", "mm", jet, size => size.JetDiameterMetres * 1e3),
        ];
    }

    private static OutsideCheck Row(SizingCase example, string source, SourceKind kind, string quantity, string unit, double published, Func<SizingResult, double> ours) => new()
    {
        Subject = FormattableString.Invariant($"{example.SweptVolumeCubicMetres * 1e6:0} cm³ at {example.SpeedRpm} rev/min, two carburettors"),
        Quantity = quantity,
        Unit = unit,
        Published = published,
        Ours = () => ours(ChokeAndJetSizing.Size(example, Textbook.Air)),
        Source = source,
        Kind = kind,
        Tolerance = kind == SourceKind.Derived ? ReworkedDigits : OutsideCheck.TextbookTolerance,
    };
}
