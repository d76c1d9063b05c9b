using Tickover.Physics.Supply;
using Tickover.Workshop.Mixture;
using static Tickover.Workshop.Supply.SupplyWords;

namespace Tickover.Workshop.Supply.Working;

/// <summary>The working of one part of a line in one case.</summary>
public static class PartWorking
{
    /// <summary>Its steps, in the order of the reckoning.</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="one">The case.</param>
    /// <param name="part">The part at work.</param>
    /// <returns>Steps with formula, numbers and answer.</returns>
    public static IReadOnlyList<WorkingStep> Of(FuelSupply supply, SupplyCase one, PartPoint part)
    {
        ArgumentNullException.ThrowIfNull(supply);
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(part);
        var steps = new List<WorkingStep> { Taken(supply, part) };
        if (part.HeightPascals != 0)
        {
            steps.Add(Height(supply, part));
        }

        steps.Add(Pressures(supply, one, part));
        if (part.Part.HeatTakenWattsPerKelvin > 0)
        {
            steps.Add(Warmth(one, part));
        }

        steps.Add(Finding.VapourFindings.Boils(supply, part));
        return steps;
    }

    private static WorkingStep Taken(FuelSupply supply, PartPoint part) => part.Part switch
    {
        PipeRun pipe => Pipe(supply, part, pipe),
        FuelPump pump => Step("What the pump adds", "read off its curve at this flow", $"{pump.Curve.Points.Count} points, {LitresHour(part.VolumeFlow)}", Pressure(supply.Unit, -part.DropPascals), "supply (9)"),
        FuelFilter filter => Step("What the filter takes", "loading × element × viscosity × flow + unions × flow²", $"loading {WorkingNumber.Fixed(filter.Loading, 1)}, {LitresHour(part.VolumeFlow)}, {WorkingNumber.Fixed(1000 * part.Viscosity, 2)}\u2009mPa s", Pressure(supply.Unit, part.DropPascals), "supply (6)"),
        PressureRegulator regulator => Step(part.Regulates ? "The regulator holds" : "The regulator is wide open", "no more than setting − droop × flow", $"{Pressure(supply.Unit, regulator.SetGaugePascals)} − {Pressure(supply.Unit, regulator.DroopPascalSeconds * part.VolumeFlow)}", Pressure(supply.Unit, regulator.SetGaugePascals - regulator.DroopPascalSeconds * part.VolumeFlow), "supply (13)"),
        LineFitting fitting => Step("What the fitting takes", "loss × density × speed² ÷ 2", $"{WorkingNumber.Fixed(fitting.LossCoefficient, 1)} × {WorkingNumber.Density(part.Density)} × ({WorkingNumber.Fixed(part.Speed, 2)}\u2009m/s)² ÷ 2", Pressure(supply.Unit, part.DropPascals), "supply (5)"),
        TankReturn back => Step("What the restrictor passes", "Cd × area × √(2 × pressure ÷ density)", $"Ø{WorkingNumber.Millimetres(back.RestrictorMetres)}, {Pressure(supply.Unit, part.DropPascals)}", LitresHour(part.VolumeFlow), "supply (14)"),
        FloatValve valve => Step("What the needle leaves open", "flow ÷ flow wide open", $"{LitresHour(part.VolumeFlow)} through a seat of {WorkingNumber.Millimetres(valve.SeatMetres)}, which would pass {LitresHour(valve.WideOpenFlow(part.DropPascals, part.Density))} on {Pressure(supply.Unit, part.DropPascals)}", Pressure(supply.Unit, part.DropPascals) + " is what this flow needs with the needle right off", "supply (14)"),
        _ => Step("What the open end takes", "density × speed² ÷ 2", $"{WorkingNumber.Fixed(part.Speed, 2)}\u2009m/s", Pressure(supply.Unit, part.DropPascals), "supply (5)"),
    };

    private static WorkingStep Pipe(FuelSupply supply, PartPoint part, PipeRun pipe)
    {
        var reynolds = pipe.Reynolds(part.VolumeFlow, part.Density, part.Viscosity);
        if (reynolds <= 0)
        {
            return Step("What the pipe takes", "nothing flows", "0", Pressure(supply.Unit, part.DropPascals), "supply (1)");
        }

        var friction = DarcyFriction.Of(reynolds, pipe.RoughnessMetres / pipe.BoreMetres);
        var kind = reynolds <= DarcyFriction.LaminarUpTo ? "laminar" : reynolds >= DarcyFriction.TurbulentFrom ? "turbulent" : "between laminar and turbulent";
        return Step(
            "What the pipe takes",
            "(f × length ÷ bore + losses) × density × speed² ÷ 2",
            $"({WorkingNumber.Fixed(friction, 4)} × {WorkingNumber.Fixed(pipe.LengthMetres, 2)}\u2009m ÷ {WorkingNumber.Millimetres(pipe.BoreMetres)} + {WorkingNumber.Fixed(pipe.LossCoefficient, 1)}) × {WorkingNumber.Density(part.Density)} × ({WorkingNumber.Fixed(part.Speed, 2)}\u2009m/s)² ÷ 2",
            Pressure(supply.Unit, part.DropPascals),
            reynolds <= DarcyFriction.LaminarUpTo ? "supply (1), (5)" : "supply (2), (5)") with
        { Note = $"Reynolds number {WorkingNumber.Fixed(reynolds, 0)}: {kind}." };
    }

    private static WorkingStep Height(FuelSupply supply, PartPoint part) => Step(
        part.HeightPascals > 0 ? "What the rise takes" : "What the fall gives",
        "density × g × rise",
        $"{WorkingNumber.Density(part.Density)} × 9.81\u2009m/s² × {WorkingNumber.Fixed(1000 * part.HeightPascals / (part.Density * Physics.Air.AirConstants.StandardGravityMetresPerSecondSquared), 0)}\u2009mm",
        Pressure(supply.Unit, part.HeightPascals),
        "supply (7)");

    private static WorkingStep Pressures(FuelSupply supply, SupplyCase one, PartPoint part)
    {
        var air = one.Point.Duty.AirPascals;
        return Step(
            part.Part.IsEnd ? "Pressure before it" : "Pressure behind it",
            "pressure before − what it takes − its rise",
            $"{Pressure(supply.Unit, part.InletPascals - air)} before it, against the air",
            $"{Pressure(supply.Unit, part.OutletPascals - air)} against the air; a gauge reads {Pressure(supply.Unit, part.StaticPascals - air)}",
            "supply (7)");
    }

    private static WorkingStep Warmth(SupplyCase one, PartPoint part) => Step(
        "How warm the fuel leaves it",
        "air − (air − fuel) × e^(−heat taken ÷ (flow × specific heat))",
        $"{Celsius(one.Point.Duty.Around(part.Part.Zone))} around it, fuel comes at {Celsius(part.InletKelvin)}, {WorkingNumber.Fixed(part.Part.HeatTakenWattsPerKelvin, 2)}\u2009W/K, {WorkingNumber.PerHour(part.MassFlow)}",
        Celsius(part.OutletKelvin),
        "supply (8)");

    private static WorkingStep Step(string title, string formula, string numbers, string answer, string equation) => new()
    {
        Title = title,
        Formula = formula,
        NumbersIn = numbers,
        Answer = answer,
        Equation = equation,
        Inputs = [],
    };
}
