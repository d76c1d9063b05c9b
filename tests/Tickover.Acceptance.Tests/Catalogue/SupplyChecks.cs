using System.Text.RegularExpressions;
using Tickover.Physics.Air;
using Tickover.Physics.Fuels;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Pipes, pumps, suction, vapour pressure, float balance and demand of the fuel line.</summary>
public static class SupplyChecks
{
    private const string Colebrook = "C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939), root found independently";
    private const string HaalandFit = "S. E. Haaland, J. Fluids Eng. 105 (1983), evaluated independently";
    private const string Munson = "Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, ex. 8.2";
    private const string Crane = "Crane, Flow of Fluids, TP-410M, ex. 7-1";
    private const string CraneSuction = "Crane, Flow of Fluids, TP-410, ex. 7-32";
    private const string DeNevers = "N. de Nevers, Fluid Mechanics for Chemical Engineers, ex. 6.5";
    private const string Siphon = "Y. Çengel and J. Cimbala, Fluid Mechanics, ex. 5-7";
    private const string Ap42 = "U.S. EPA, AP-42 ch. 7.1, table 7.1-2, motor petrol";
    private const string En228 = "Vapour lock index by EN 228, as worked in an open course";
    private const string Astm = "ASTM D4814, appendix, evaluated independently in °F and psi";
    private const string Balance = "Balance of moments at the needle, evaluated independently";
    private const string Orifice = "Torricelli with a coefficient of 0.65, evaluated independently";
    private const string OwnLine = "Hagen-Poiseuille and Colebrook, evaluated independently";
    private const string Practice = "demand in l/h about 0.32 of the horsepower";
    private const string Litre = "40 kW a litre (35 to 45) from road engines with carburettors at 0.33 kg/kWh (0.30 to 0.36), from memory";
    private const double Psi = 6894.757293168;
    private const double Foot = 0.3048;

    public static CheckGroup Group { get; } = new(
        "Supply",
        [.. Friction(), .. Pipes(), .. Lines(), .. Systems(), .. Suction(), .. Vapour(), .. Indices(), .. Floats(), .. Demand()]);

    private static OutsideCheck Check(string subject, string quantity, (string Source, SourceKind Kind) from, (double Published, string Unit, double Tolerance) figure, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Source = from.Source,
        Kind = from.Kind,
        Published = figure.Published,
        Unit = figure.Unit,
        Tolerance = figure.Tolerance,
        Ours = ours,
    };

    private static IEnumerable<OutsideCheck> Friction()
    {
        (double Re, double Roughness, double Root, double Fit)[] rows =
        [
            (1e5, 1e-4, 0.0185139, 0.0182651),
            (1e5, 1e-3, 0.0221745, 0.0219662),
            (1e4, 2.5e-4, 0.0312667, 0.0311724),
            (4000, 1e-3, 0.0409104, 0.0412162),
            (1e6, 0, 0.0116450, 0.0115868),
        ];
        foreach (var row in rows)
        {
            var subject = FormattableString.Invariant($"pipe at Re {row.Re}, roughness {row.Roughness} of the bore");
            yield return Check(subject, "friction factor", (Colebrook, SourceKind.Derived), (row.Root, "1", 1e-5), () => DarcyFriction.Colebrook(row.Re, row.Roughness));
            yield return Check(subject, "friction factor, explicit", (HaalandFit, SourceKind.Derived), (row.Fit, "1", 1e-5), () => DarcyFriction.Haaland(row.Re, row.Roughness));
        }

        yield return Check("smooth pipe of 50 mm, water at 30 °C, 200 l/min, Re 100 600", "friction factor", (Crane, SourceKind.Published), (0.0179, "1", 0.006), () => DarcyFriction.Of(100_600, 0));
    }

    private static IEnumerable<OutsideCheck> Pipes()
    {
        yield return Check("oil of 0.40 Pa s, 20 mm bore, 10 m, 2·10⁻⁵ m³/s", "drop", (Munson, SourceKind.Published), (20.4, "kPa", 0.003), () => Worked(Pipe(0.020, 10, 0), 2e-5, 900, 0.40) / 1000);
        yield return Check("oil of 0.40 Pa s, 20 mm bore, density 900: slope at which it runs by its own weight, 2·10⁻⁵ m³/s", "slope", (Munson, SourceKind.Published), (13.34, "°", 0.003), () =>
            double.RadiansToDegrees(Math.Asin(Worked(Pipe(0.020, 10, 0), 2e-5, 900, 0.40) / (900 * Textbook.Gravity * 10))));
        foreach (var (bore, litresHour, pascals) in new[] { (6.0, 10.0, 175.0), (6, 20, 349), (6, 60, 3187), (8, 10, 55.3), (8, 20, 110.5) })
        {
            yield return Check(FormattableString.Invariant($"hose of {bore} mm, 4 m, {litresHour} l/h, density 740, 0.5 mPa s, roughness 1.5 µm"), "drop", (OwnLine, SourceKind.Derived), (pascals, "Pa", 0.002), () =>
                Worked(Pipe(bore / 1000, 4, 1.5e-6), litresHour / 3.6e6, 740, 5e-4));
        }
    }

    private static PipeRun Pipe(double bore, double length, double roughness) => new() { Name = "pipe", BoreMetres = bore, LengthMetres = length, RoughnessMetres = roughness };

    // Friction factor of the model with the book's own density and viscosity.
    private static double Worked(PipeRun pipe, double flow, double density, double viscosity)
    {
        var speed = flow / (Math.PI / 4 * pipe.BoreMetres * pipe.BoreMetres);
        var friction = DarcyFriction.Of(pipe.Reynolds(flow, density, viscosity), pipe.RoughnessMetres / pipe.BoreMetres);
        return friction * pipe.LengthMetres / pipe.BoreMetres * density * speed * speed / 2;
    }

    private static IEnumerable<OutsideCheck> Lines()
    {
        // Whole lines through the solver: friction as the book takes it, as velocity heads.
        SupplyPoint Gravity()
        {
            var line = new SupplyLine
            {
                TankSurfaceHeightMetres = 10,
                Parts =
                [
                    new LineFitting { Name = "pipe", BoreMetres = 0.1, LossCoefficient = 4 * 0.005 * 100 / 0.1 - SupplyLosses.Exit, OutletHeightMetres = 0 },
                    new OpenEnd { Name = "end", After = "pipe", BoreMetres = 0.1 },
                ],
            };
            return SupplySolver.Solve(line, Duty());
        }

        SupplyPoint OverTheTop()
        {
            var line = new SupplyLine
            {
                TankSurfaceHeightMetres = 0.75,
                Parts =
                [
                    new LineFitting { Name = "top", BoreMetres = 0.005, LossCoefficient = 0, OutletHeightMetres = 2.75 },
                    new OpenEnd { Name = "end", After = "top", BoreMetres = 0.005 },
                ],
            };
            return SupplySolver.Solve(line, Duty() with { AirPascals = 101_325 });
        }

        yield return Check("petrol down 10 m through 100 m of 0.1 m pipe, Fanning 0.005", "speed", (DeNevers, SourceKind.Published), (3.132, "m/s", 1e-3), () => Gravity().Of("end")!.Speed);
        yield return Check("petrol down 10 m through 100 m of 0.1 m pipe, Fanning 0.005", "flow", (DeNevers, SourceKind.Published), (0.024599, "m³/s", 1e-3), () => Gravity().Of("end")!.VolumeFlow);
        yield return Check("petrol siphon of 5 mm, end 0.75 m below the tank's surface", "time for 4 l", (Siphon, SourceKind.Published), (53.1, "s", 1e-3), () => 0.004 / OverTheTop().Of("end")!.VolumeFlow);
        yield return Check("petrol siphon of 5 mm, top 2.75 m above its end", "absolute pressure at the top", (Siphon, SourceKind.Published), (81.1, "kPa", 3e-3), () => OverTheTop().Of("top")!.StaticPascals / 1000);
    }

    private static SupplyDuty Duty() => new()
    {
        Name = "book",
        Fuel = new SupplyFuel { Blend = FuelGrade.Ethanol(0).Blend, VapourPressureAt38Pascals = 30_000 },
        DemandKilogramsPerSecond = new Dictionary<string, double>(StringComparer.Ordinal),
        TankKelvin = 293.15,
        ChassisKelvin = 293.15,
        BonnetKelvin = 293.15,
    };

    private static IEnumerable<OutsideCheck> Systems()
    {
        // Pump H = 12 - 70 Q - 4300 Q² m by a chord at every 0.0005 m³/s, against the closed form of H = k Q² + lift: Q by the quadratic.
        const double density = 745;
        static double Head(double q) => 12 - 70 * q - 4300 * q * q;
        SupplyPoint Meet(double lift, double k)
        {
            var weight = density * AirConstants.StandardGravityMetresPerSecondSquared;
            var points = Enumerable.Range(0, 91).Select(i => (Flow: i * 0.0005, Pressure: weight * Head(i * 0.0005))).ToList();
            var heads = k * 2 * AirConstants.StandardGravityMetresPerSecondSquared * Math.Pow(Math.PI / 4 * 0.01, 2);
            var line = new SupplyLine
            {
                Parts =
                [
                    new FuelPump { Name = "pump", Kind = PumpKind.Electric, Curve = new PumpCurve(points) },
                    new LineFitting { Name = "main", After = "pump", BoreMetres = 0.1, LossCoefficient = heads - SupplyLosses.Exit, OutletHeightMetres = lift },
                    new OpenEnd { Name = "end", After = "main", BoreMetres = 0.1, OutletHeightMetres = lift },
                ],
            };
            return SupplySolver.Solve(line, Duty());
        }

        foreach (var (lift, k) in new[] { (3.0, 12_000.0), (6.0, 30_000.0) })
        {
            var flow = (-70 + Math.Sqrt(70 * 70 + 4 * (4300 + k) * (12 - lift))) / (2 * (4300 + k));
            yield return Check(
                FormattableString.Invariant($"pump of 12 - 70 Q - 4300 Q² m on a main of {lift} m and {k} Q² m"),
                "flow",
                (Sources.Reworked("C. J. Schaschke, Fluid Mechanics: Worked Examples for Engineers, ex. 9.2 (the pump), the main invented"), SourceKind.Derived),
                (flow, "m³/s", 1e-3),
                () => Meet(lift, k).Of("end")!.VolumeFlow);
        }
    }

    private static IEnumerable<OutsideCheck> Suction()
    {
        yield return Check("pump lifting 25 ft less, water at 60 °F, 5 psi over the air, 6 ft lost", "suction head available", (CraneSuction, SourceKind.Published), (13.887, "ft", 1e-3), () =>
        {
            const double density = 62.364 * 16.01846337;
            var inlet = (5 + 14.696) * Psi - density * AirConstants.StandardGravityMetresPerSecondSquared * (25 + 6) * Foot;
            return FuelVapour.SuctionHead(inlet, 0.256 * Psi, density) / Foot;
        });
        foreach (var (kilopascals, metres) in new[] { (35.0, 8.64), (60, 5.19), (85, 1.75) })
        {
            yield return Check(FormattableString.Invariant($"petrol of density 740, vapour pressure {kilopascals} kPa, lifted 0.3 m with 0.2 m lost at sea level"), "suction head available", (Balance, SourceKind.Derived), (metres, "m", 2e-3), () =>
                FuelVapour.SuctionHead(101_325 - 740 * Textbook.Gravity * 0.5, kilopascals * 1000, 740));
        }
    }

    private static IEnumerable<OutsideCheck> Vapour()
    {
        (double Rvp, double[] Table)[] rows =
        [
            (13, [4.7, 5.7, 6.9, 8.3, 9.9, 11.7, 13.8]),
            (10, [3.4, 4.2, 5.2, 6.2, 7.4, 8.8, 10.5]),
            (7, [2.3, 2.9, 3.5, 4.3, 5.2, 6.2, 7.4]),
        ];
        return rows.SelectMany(row => row.Table.Select((published, i) => Check(
            FormattableString.Invariant($"petrol of RVP {row.Rvp} psi at {40 + 10 * i} °F"),
            "true vapour pressure",
            (Ap42, SourceKind.FromMemory),
            (published, "psi", 0.025),
            () => FuelVapour.TruePressure(row.Rvp * Psi, (40 + 10 * i + 459.67) / 1.8) / Psi)));
    }

    private static IEnumerable<OutsideCheck> Indices() =>
    [
        Check("petrol of 90 kPa with 50 % off at 70 °C", "vapour lock index", (En228, SourceKind.Published), (1250, "1", 1e-9), () => FuelVapour.LockIndex(90_000, 0.50)),
        Check("petrol of 60 kPa with 48 % off at 70 °C", "vapour lock index", (En228, SourceKind.Published), (936, "1", 1e-9), () => FuelVapour.LockIndex(60_000, 0.48)),
        Check("petrol of 60 kPa, T10 55 °C, T50 100 °C", "temperature of twenty volumes of vapour", (Astm, SourceKind.Derived), (60.64, "°C", 1e-3), () => FuelVapour.TwentyToOneKelvin(60_000, 328.15, 373.15) - 273.15),
        Check("petrol of 90 kPa, T10 45 °C, T50 90 °C", "temperature of twenty volumes of vapour", (Astm, SourceKind.Derived), (47.07, "°C", 1e-3), () => FuelVapour.TwentyToOneKelvin(90_000, 318.15, 363.15) - 273.15),
        Check("petrol with 10 % ethanol", "rise of the vapour pressure", ("R. L. McCormick, NREL memorandum, 26 March 2012: about 1 psi", SourceKind.Published), (6.9, "kPa", 0.01), () => (FuelVapour.WithEthanol(60_000, 0.10) - 60_000) / 1000),
        Check("tester's total pressure of 66 kPa", "dry vapour pressure equivalent", ("EN 13016-1, 0.965 ASVP - 3.78 kPa", SourceKind.FromMemory), (59.91, "kPa", 1e-6), () => FuelVapour.DryEquivalent(66_000) / 1000),
    ];

    private static IEnumerable<OutsideCheck> Floats()
    {
        static FloatValve Valve(double seat) => new() { Name = "valve", SeatMetres = seat / 1000, LeverRatio = 3, FloatAreaSquareMetres = 9e-4 };
        foreach (var (kilopascals, millimetres) in new[] { (10.0, 1.227), (15, 1.841), (20, 2.454), (25, 3.068), (35, 4.295) })
        {
            yield return Check(FormattableString.Invariant($"needle of 1.75 mm, arms 3 : 1, float of 9 cm², {kilopascals} kPa"), "deeper by", (Balance, SourceKind.Derived), (millimetres, "mm", 1e-3), () => 1000 * FloatLevel.ShutOffRise(Valve(1.75), kilopascals * 1000, 740));
        }

        foreach (var (seat, litresHour) in new[] { (1.5, 26.3), (1.75, 35.8), (2, 46.8) })
        {
            yield return Check(FormattableString.Invariant($"needle off a seat of {seat} mm, 15 kPa, density 740"), "flow", (Orifice, SourceKind.Derived), (litresHour, "l/h", 2e-3), () => 3.6e6 * Valve(seat).WideOpenFlow(15_000, 740));
        }
    }

    private static IEnumerable<OutsideCheck> Demand()
    {
        const double horsepower = 745.7;
        yield return Check("6.6 l/h of 0.78 for 160 N at 0.35 m and 3000 rpm: power that 0.293 kg/kWh makes of it", "fuel", ("H. N. Gupta, Fundamentals of Internal Combustion Engines, 1st ed. 2006, ex. 16.4 and 16.5", SourceKind.Published), (6.6, "l/h", 3e-3), () =>
            3.6e6 * FuelDemand.FromPower(17_593, 0.293 / 3.6e6) / 780);
        yield return Check("100 kW at 0.33 kg/kWh, density 740", "fuel", ("Arithmetic, worked out independently", SourceKind.Derived), (44.6, "l/h", 1e-3), () => 3.6e6 * FuelDemand.FromPower(100_000, 0.33 / 3.6e6) / 740);
        yield return Check("six cylinders of 700 cm³ at 3200 rev/min, filled to 0.782 of air at 0.9 bar and 305 K, 12 to 1", "fuel", (Sources.Rajput("17.19"), SourceKind.Published), (27, "kg/h", 5e-3), () =>
            3600 * FuelDemand.FromAir(FuelDemand.FourStrokeAir(6 * 700e-6, 3200, 0.782, 0.9e5 / (287 * 305)), 12));
        foreach (var (subject, swept, engine, rest) in new[]
        {
            ("four of 372 cm³, a twin-barrel carburettor on a shared manifold, all else by rule, 5200 rpm", 1.488, "\"layout\": \"inline four\", \"cylinders\": 4, \"firingOrder\": [1, 3, 4, 2], \"bore\": \"76 mm\", \"stroke\": \"82 mm\", \"peakPowerSpeed\": \"5200 rpm\"", "\"manifold\": \"shared\", \"carburettors\": [{ \"barrels\": [{ \"feeds\": [1, 2, 3, 4] }, { \"feeds\": [1, 2, 3, 4] }] }]"),
            ("six of 466 cm³, a barrel each, all else by rule, 5500 rpm", 2.798, "\"layout\": \"inline six\", \"cylinders\": 6, \"firingOrder\": [1, 5, 3, 6, 2, 4], \"bore\": \"83 mm\", \"stroke\": \"86.2 mm\", \"peakPowerSpeed\": \"5500 rpm\"", "\"carburettors\": [{ \"barrels\": [{ \"feeds\": [1] }, { \"feeds\": [2] }] }, { \"barrels\": [{ \"feeds\": [3] }, { \"feeds\": [4] }] }, { \"barrels\": [{ \"feeds\": [5] }, { \"feeds\": [6] }] }]"),
        })
        {
            yield return Check(subject, "fuel wide open a litre swept, by the models", (Litre, SourceKind.CommonPractice), (13.2, "kg/h", 0.15), () => ByModels(engine, rest) / swept);
        }

        yield return Check("100 bhp at 0.32 kg/kWh, density 745", "fuel", (Practice, SourceKind.CommonPractice), (32, "l/h", 0.05), () => 3.6e6 * FuelDemand.FromPower(100 * horsepower, 0.32 / 3.6e6) / 745);
    }

    // The demand of a car document as 'tickover supply' takes it, at the speed of peak power, kg/h.
    private static double ByModels(string engine, string rest)
    {
        var rpm = Regex.Match(engine, @"(?<rpm>\d+) rpm", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["rpm"].Value;
        var read = SupplyDocument.Read($$"""
            {
              "format": "tickover-supply-1", "name": "check", "tank": { "surface": 0 },
              "parts": [{ "name": "pick-up", "kind": "pick-up", "bore": 8, "height": 0 }, { "name": "valve", "kind": "float valve", "after": "pick-up", "seat": 2 }],
              "engine": { "rpm": {{rpm}}, "idle": 1.5, "car": { "format": "tickover-car-1", "name": "check", "engine": { {{engine}} }, {{rest}} } }
            }
            """);
        return read.Supply is { } supply ? 3600 * supply.Engine.FullLoadKilogramsPerSecond : throw new InvalidOperationException(string.Join("; ", read.Faults));
    }
}
