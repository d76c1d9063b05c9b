using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Suction of a choke from engine data, jets and throats from fuel flow; air incompressible.</summary>
public static class SuctionChecks
{
    private const double WaterMillimetre = 9.81;
    private const double PerHour = 1.0 / 3600;
    private const double ReworkedDigits = 1e-4;

    public static CheckGroup Group { get; } = new("Suction, and jets from fuel flow (air incompressible)",
        [.. EngineSuction(), .. JetFromFlow(), .. ThroatFromFlow(), .. Plain()]);

    private static OutsideCheck Printed(string subject, string quantity, string unit, double published, string source, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = unit,
        Published = published,
        Ours = ours,
        Source = source,
        Kind = SourceKind.Published,
    };

    private static OutsideCheck Reworked(string subject, string quantity, string unit, double published, string source, Func<double> ours) =>
        Printed(subject, quantity, unit, published, Sources.Reworked(source), ours) with { Kind = SourceKind.Derived, Tolerance = ReworkedDigits };

    private static IEnumerable<OutsideCheck> EngineSuction()
    {
        var hundred = Circle.Area(0.100);
        double RajputAir() => 1.2 * ChokeAndJetSizing.AirVolumeFlow(4 * hundred * 0.120, 1800, 0.75);
        double MathurAir() => 1.2 * ChokeAndJetSizing.AirVolumeFlow(4 * hundred * 0.120, 2000, 0.70);
        double GanesanAir() => 1.15 * ChokeAndJetSizing.AirVolumeFlow(4 * hundred * 0.100, 2400, 0.75);
        double Drop(double air, double millimetres, double cd, double rho) => IncompressibleOrifice.PressureDrop(air, cd * Circle.Area(millimetres * 1e-3), rho);

        return
        [
            Printed("four cylinders 100 × 120 mm at 1800 rev/min, 28 mm choke", "depression", "Pa", 4447.61, Sources.Rajput("11.1"), () => Drop(RajputAir(), 28, 0.8, 1.2)),
            Reworked("four cylinders 100 × 120 mm at 1800 rev/min, 28 mm choke", "air flow", "g/s", 50.894, Sources.Rajput("11.1"), () => RajputAir() * 1e3),
            Reworked("four cylinders 100 × 120 mm at 2000 rev/min, 30 mm choke", "depression", "Pa", 3629.6, Sources.Mathur("11.3"), () => Drop(MathurAir(), 30, 0.8, 1.2)),
            Reworked("four cylinders 100 × 100 mm at 2400 rev/min, 30 mm choke", "air flow", "g/s", 54.192, Sources.Ganesan("8.2"), () => GanesanAir() * 1e3),
            Reworked("four cylinders 100 × 100 mm at 2400 rev/min, 30 mm choke", "depression", "Pa", 4543.2, Sources.Ganesan("8.2"), () => Drop(GanesanAir(), 30, 0.75, 1.15)),
        ];
    }

    private static IEnumerable<OutsideCheck> JetFromFlow()
    {
        var air = Textbook.Air;
        const string rajput = "7.2 kg/h of fuel at 15 to 1 through a 24 mm choke";
        const string mathur = "7.5 kg/h of fuel at 15 to 1 through a 22 mm choke";
        double RajputDrop() => IncompressibleOrifice.PressureDrop(7.2 * PerHour * 15, 0.8 * Circle.Area(0.024), air.Density(new GasState(1.013e5, 300)));
        double MathurDrop() => IncompressibleOrifice.PressureDrop(7.5 * PerHour * 15, 0.82 * Circle.Area(0.022), air.Density(new GasState(1.013e5, 298)));
        double Jet(double perHour, double drop, double lip) => 1e3 * Circle.Diameter(
            IncompressibleOrifice.EffectiveArea(perHour * PerHour, drop - 750 * Textbook.Gravity * lip, 750) / 0.7);

        return
        [
            Reworked(rajput, "depression", "Pa", 2920.1, Sources.Rajput("11.3"), RajputDrop),
            Printed(rajput, "jet diameter", "mm", 1.32, Sources.Rajput("11.3"), () => Jet(7.2, RajputDrop(), 4.2e-3)),
            Reworked(rajput, "jet diameter", "mm", 1.3219, Sources.Rajput("11.3"), () => Jet(7.2, RajputDrop(), 4.2e-3)),
            Reworked(mathur, "depression", "Pa", 4242.9, Sources.Mathur("11.4"), MathurDrop),
            Printed(mathur, "jet diameter", "mm", 1.228, Sources.Mathur("11.4") + "; Keswani, 4th ed. 2003, ex. 9.7", () => Jet(7.5, MathurDrop(), 4e-3)),
            Reworked(mathur, "jet diameter", "mm", 1.2277, Sources.Mathur("11.4"), () => Jet(7.5, MathurDrop(), 4e-3)),
        ];
    }

    private static IEnumerable<OutsideCheck> ThroatFromFlow()
    {
        const string rajput = "5.45 kg/h through a 2 mm² jet at 15 to 1";
        const string gupta = "6 kg/h through a 1.2 mm jet at 15.3 to 1";
        const string both = "5 kg/h through a 2 mm² jet at 16 to 1";
        double Needed(double perHour, double jetArea, double rho, double lip) =>
            IncompressibleOrifice.PressureDrop(perHour * PerHour, jetArea, rho) + rho * Textbook.Gravity * lip;
        double RajputDrop() => Needed(5.45, 0.75 * 2e-6, 720, 6.35e-3);
        double GuptaDrop() => Needed(6, 0.65 * Circle.Area(1.2e-3), 750, 3e-3);
        double BothDrop() => Needed(5, 0.8 * 2e-6, 750, 5e-3);
        var guptaAir = Textbook.Air.Density(new GasState(1.013e5, 294));
        double Throat(double perHour, double afr, double drop, double rho) => IncompressibleOrifice.EffectiveArea(perHour * PerHour * afr, drop, rho) / 0.8;

        return
        [
            Printed(rajput, "depression", "cm of water", 7.67, Sources.Rajput("11.4"), () => RajputDrop() / WaterMillimetre / 10),
            Printed(rajput, "throat diameter", "cm", 2.86, Sources.Rajput("11.4"), () => Circle.Diameter(Throat(5.45, 15, RajputDrop(), 1.29)) * 100),
            Reworked(rajput, "depression", "Pa", 752.2, Sources.Rajput("11.4"), RajputDrop),
            Reworked(rajput, "throat diameter", "mm", 28.64, Sources.Rajput("11.4"), () => Circle.Diameter(Throat(5.45, 15, RajputDrop(), 1.29)) * 1e3),
            Reworked(gupta, "depression", "Pa", 3448.8, Sources.Gupta("9.5"), GuptaDrop),
            Reworked(gupta, "throat diameter", "mm", 21.118, Sources.Gupta("9.5"), () => Circle.Diameter(Throat(6, 15.3, GuptaDrop(), guptaAir)) * 1e3),
            Reworked(both, "depression", "Pa", 539.13, Sources.Rajput("11.2"), BothDrop),
            Reworked(both, "throat area", "cm²", 7.72, Sources.Rajput("11.2"), () => Throat(5, 16, BothDrop(), 1.2) * 1e4) with { Tolerance = 1e-3 },
        ];
    }

    private static IEnumerable<OutsideCheck> Plain()
    {
        ElementaryCarburettor Keswani(double choke, double jet) => new()
        {
            ChokeDiameterMetres = choke,
            JetDiameterMetres = jet,
            ChokeCoefficient = 0.93,
            JetCoefficient = 0.68,
            AirDensity = 1.29,
            FuelDensity = 720,
            Gravity = Textbook.Gravity,
        };

        const double waterCentimetres = 104;
        return
        [
            Reworked("1.0 mm jet under 104 cm of water", "fuel flow", "g/s", 2.010, Sources.Keswani("9.1"),
                () => 1e3 * IncompressibleOrifice.MassFlow(waterCentimetres * 10 * WaterMillimetre, 0.65 * Circle.Area(1e-3), 760)) with { Tolerance = 1e-3 },
            Reworked("75 mm choke, 5 mm jet, no lip", "air to fuel by mass", "1", 13.025, Sources.Keswani("9.2"), () => Keswani(0.075, 0.005).AirFuelRatio(1000)),
            Reworked("choke over jet for 15 to 1", "diameter ratio", "1", 17.412, Sources.Keswani("9.3"), () => Math.Sqrt(
                15 / (Keswani(1, 1) with { ChokeCoefficient = 0.84, JetCoefficient = 0.7, AirDensity = 1.28, FuelDensity = 753 }).AirFuelRatio(1000))),
        ];
    }
}
