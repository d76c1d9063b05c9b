using Tickover.Physics.Supply;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.StripDown;
using static System.FormattableString;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>What an engine takes, in figures and words.</summary>
/// <param name="density">Density of the fuel in the tank, kg/m³.</param>
/// <param name="consumption">Specific consumption as the document says, kg/kWh; null for the usual.</param>
internal sealed class DemandWords(double density, double? consumption)
{
    private const double UsualConsumption = 0.33; // kg/kWh: carburettors at full load 0.30 to 0.36, from memory
    private const double UsualIdle = 1.5; // l/h: common practice for two to three litres
    private const double JoulesPerKilowattHour = 3.6e6;
    private const double Hour = 3600;

    private double Consumption => consumption ?? UsualConsumption;

    private string ConsumptionWords => Invariant($"{Consumption:0.00} kg/kWh{(consumption is null ? " (common practice)" : "")}");

    /// <summary>Full load as the document says.</summary>
    public DemandFigure Stated(double litresHour) => new(Fuel(litresHour), Invariant($"{litresHour:0.#} l/h, as the document says"), []);

    /// <summary>Full load by power and specific consumption.</summary>
    public DemandFigure OfPower(double kilowatts)
    {
        var demand = ByRule(SupplyUnits.FromKilowatts(kilowatts));
        return new(demand, Invariant($"{kilowatts:0.#} kW × {ConsumptionWords} ÷ {density:0} kg/m³ = {Litres(demand)}"), []);
    }

    /// <summary>Idle as the document says, or as usual.</summary>
    public DemandFigure Idle(double? litresHour) => litresHour is { } stated
        ? new(Fuel(stated), Invariant($"{stated:0.#} l/h, as the document says"), [])
        : new(Fuel(UsualIdle), Invariant($"{UsualIdle:0.#} l/h, common practice for two to three litres"), []);

    /// <summary>Full load by the models of a car.</summary>
    /// <param name="car">The car.</param>
    /// <param name="most">Where it takes most.</param>
    /// <param name="speeds">The speeds looked at, rpm; one where the speed is stated.</param>
    public DemandFigure OfCar(Car car, CarFuel most, IReadOnlyList<double> speeds)
    {
        var where = speeds.Count > 1 ? Invariant($"the most of {speeds[0]:0} to {speeds[^1]:0} rpm") : "the speed written";
        var step = new WorkingStep
        {
            Title = "Fuel at full load",
            Formula = "air of all barrels ÷ air to one of fuel ÷ density, wide open at the speed where it is most",
            NumbersIn = Numbers(most),
            Answer = Litres(most.FuelKilogramsPerSecond),
            Equation = "supply (35)",
            Inputs = [],
            Note = Invariant($"Air and fuel by the models of breathing and metering on {car.FuelGrade}, ±{100 * most.RelativeBand:0} % until they are fitted to the car.{OffTarget(most)}"),
        };
        return new(
            most.FuelKilogramsPerSecond,
            Invariant($"{Numbers(most)} = {Litres(most.FuelKilogramsPerSecond)}, by the models of {car.Name} wide open at {most.Rpm:0} rpm, {where}; ±{100 * most.RelativeBand:0} %"),
            [step, Thumb(most)]);
    }

    /// <summary>Idle by the breathing model of a car, at the mixture its screws are set to.</summary>
    /// <param name="idle">One barrel at idle.</param>
    /// <param name="barrels">How many there are.</param>
    public DemandFigure IdleOfCar(IdlePoint idle, int barrels)
    {
        var (air, fuel) = (barrels * idle.KilogramsPerSecond, barrels * idle.FuelKilogramsPerSecond);
        var numbers = Invariant($"{Hour * air:0.0} kg/h of air ÷ {air / fuel:0.0} (λ {IdleFinder.IdleLambda:0.00}, as the mixture screws are set) ÷ {density:0} kg/m³");
        var step = new WorkingStep
        {
            Title = "Fuel at idle",
            Formula = "air of all barrels ÷ air to one of fuel ÷ density",
            NumbersIn = numbers,
            Answer = Litres(fuel),
            Equation = "supply (31)",
            Inputs = [],
            Note = Invariant($"At {idle.Rpm:0} rpm with the plates {idle.PlateDegrees:0.0}° off their seats, where by the breathing model the work just turns the engine over.{(idle.Doubt.Length > 0 ? " That is outside what engines of this size usually take (common practice): where it was read, write it as \"idle\"." : "")}"),
        };
        return new(fuel, Invariant($"{numbers} = {Litres(fuel)}, by the breathing model at {idle.Rpm:0} rpm"), [step]);
    }

    private string OffTarget(CarFuel most)
    {
        var target = MixtureTargets.At(most.ThrottleDegrees);
        var set = most.FuelKilogramsPerSecond * most.Lambda / ((target.Richest + target.Leanest) / 2);
        return most.Lambda >= target.Richest && most.Lambda <= target.Leanest ? ""
            : Invariant($" At full load λ {target.Richest:0.00} to {target.Leanest:0.00} is wanted (common practice): jetted so, the same air takes {Litres(set)}.");
    }

    // The rule of thumb read backwards: no second way to the demand, but a figure the maker's can be held against.
    private WorkingStep Thumb(CarFuel most) => new()
    {
        Title = "Against the rule of thumb",
        Formula = "fuel ÷ consumption",
        NumbersIn = Invariant($"{Hour * most.FuelKilogramsPerSecond:0.0} kg/h ÷ {ConsumptionWords}"),
        Answer = Invariant($"{most.FuelKilogramsPerSecond / (Consumption / JoulesPerKilowattHour) / 1000:0} kW"),
        Equation = "supply (30)",
        Inputs = [],
        Note = "So much power that fuel usually makes wide open, at 0.30 to 0.36 kg/kWh. Hold the maker's figure against it.",
    };

    private string Numbers(CarFuel at) => Invariant($"{Hour * at.AirKilogramsPerSecond:0.0} kg/h of air ÷ {at.AirFuelRatio:0.0} (λ {at.Lambda:0.00}) ÷ {density:0} kg/m³");

    private string Litres(double kilogramsPerSecond) => Invariant($"{SupplyUnits.ToLitresHour(kilogramsPerSecond / density):0.0} l/h");

    private double Fuel(double litresHour) => density * SupplyUnits.FromLitresHour(litresHour);

    private double ByRule(double watts) => FuelDemand.FromPower(watts, Consumption / JoulesPerKilowattHour);
}
