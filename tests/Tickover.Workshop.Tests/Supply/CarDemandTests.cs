using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.Supply;

namespace Tickover.Workshop.Tests.Supply;

public sealed class CarDemandTests
{
    private static readonly FuelSupply OfCar = SupplySamples.Tern;

    private static SupplyRead Read(Action<JsonObject, JsonObject> alter) => SupplyDocument.Read(SupplySamples.Altered(document =>
    {
        var engine = document["engine"]!.AsObject();
        alter(engine, engine["car"]!.AsObject());
    }));

    [Fact]
    public void Full_load_is_what_the_mixture_map_gives_wide_open_at_the_worst_speed()
    {
        var car = CarDocument.Read(Repository.Read("samples/tern-2800.car.json")).Car!;
        var (speeds, wide) = (MixtureSurvey.DefaultGrid(car).SpeedsRpm, MixtureSurvey.DefaultGrid(car).ThrottleDegrees[^1]);
        var map = MixtureSurvey.Run(car, new SurveyGrid { SpeedsRpm = speeds, ThrottleDegrees = [wide] }).Map;
        var fuel = speeds.Select((_, i) => Enumerable.Range(1, car.Barrels.Count).Sum(barrel => map.ForBarrel(barrel).Points[i, 0].FuelKilogramsPerSecond)).ToList();

        Assert.Equal(fuel.Max(), OfCar.Engine.FullLoadKilogramsPerSecond, 1e-12);
        Assert.Equal(speeds[fuel.IndexOf(fuel.Max())], OfCar.Cases.First(one => one.Kind == SupplyCaseKind.FullLoad).Rpm);
    }

    [Fact]
    public void The_origin_says_speed_air_and_mixture_and_comes_to_the_figure()
    {
        var said = Regex.Match(
            OfCar.Engine.Origin,
            @"^(?<air>[\d.]+) kg/h of air ÷ (?<ratio>[\d.]+) \(λ (?<lambda>[\d.]+)\) ÷ (?<density>\d+) kg/m³ = (?<litres>[\d.]+) l/h, by the models of Larkfield Tern 2800 wide open at (?<rpm>\d+) rpm, the most of 600 to (?<last>\d+) rpm; ±10 %$",
            RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(1));
        Assert.True(said.Success, OfCar.Engine.Origin);
        double Of(string name) => double.Parse(said.Groups[name].Value, CultureInfo.InvariantCulture);

        Assert.Equal(Of("litres"), 1000 * Of("air") / Of("ratio") / Of("density"), 0.5);
        Assert.InRange(Of("lambda"), 0.7, 1.05);
    }

    [Fact]
    public void The_rule_of_thumb_stands_beside_the_models_in_the_working()
    {
        var (models, thumb) = (OfCar.Engine.Working[0], OfCar.Engine.Working[1]);

        Assert.Equal("supply (35)", models.Equation);
        Assert.Equal("supply (30)", thumb.Equation);
        Assert.EndsWith("kg/h ÷ 0.33 kg/kWh (common practice)", thumb.NumbersIn, StringComparison.Ordinal);
        Assert.Equal(OfCar.Engine.FullLoadKilogramsPerSecond * 3600 / 0.33, double.Parse(thumb.Answer[..^3], CultureInfo.InvariantCulture), 1.0);
    }

    [Fact]
    public void Where_the_speed_is_written_the_models_are_asked_there()
    {
        var supply = Read((engine, _) => (engine["rpm"], engine["idle"]) = (3000, 1.8)).Supply!;

        Assert.True(supply.Engine.FullLoadKilogramsPerSecond < OfCar.Engine.FullLoadKilogramsPerSecond);
        Assert.Contains("at 3000 rpm, the speed written", supply.Engine.Origin, StringComparison.Ordinal);
        Assert.Equal("1.8 l/h, as the document says", supply.Engine.IdleOrigin);
    }

    [Fact]
    public void Idle_is_what_the_models_give_where_the_engine_just_turns_over()
    {
        var rest = OfCar.Engine.IdleKilogramsPerSecond / OfCar.Engine.FullLoadKilogramsPerSecond;

        Assert.Contains("by the breathing model at 850 rpm", OfCar.Engine.IdleOrigin, StringComparison.Ordinal);
        Assert.InRange(rest, 0.01, 0.15); // a litre or two an hour of some forty
    }

    [Fact]
    public void The_engine_burns_the_fuel_of_the_line()
    {
        var supply = Read((engine, car) => (engine["idle"], car["fuel"]) = (1.8, "E85")).Supply!;

        Assert.Equal(OfCar.Engine.FullLoadKilogramsPerSecond, supply.Engine.FullLoadKilogramsPerSecond, 1e-12);
    }

    [Fact]
    public void Hot_takes_its_part_of_the_car_s_full_load()
    {
        var analysis = SupplyAnalyst.Of(OfCar);
        double Wanted(SupplyCaseKind kind) => analysis.Of(kind).Point.Valves.Sum(valve => valve.DemandKilogramsPerSecond);

        Assert.Equal(0.25 * OfCar.Engine.FullLoadKilogramsPerSecond, Wanted(SupplyCaseKind.Hot), 1e-12);
        Assert.Equal(OfCar.Engine.IdleKilogramsPerSecond, Wanted(SupplyCaseKind.Idle), 1e-12);
    }

    [Fact]
    public void Faults_of_the_car_are_told_with_their_place_in_the_document()
    {
        var faults = Read((_, car) => car["engine"]!["bore"] = "830 mm").Faults;

        Assert.Contains(faults, fault => fault.Path is "engine.car.engine.bore");
    }

    [Theory]
    [InlineData("power", "110", "told more than once, by \"power\" and \"car\"")]
    [InlineData("fullLoad", "40", "told more than once, by \"fullLoad\" and \"car\"")]
    [InlineData("car", "null", "Nothing tells the fuel at full load")]
    [InlineData("car", "7", "Found the number 7")]
    [InlineData("idleRpm", "11000", "The models find no idle for this car at 11000 rpm")]
    public void One_way_is_asked_for_and_a_car_that_can_be_run(string member, string written, string said)
    {
        var read = Read((engine, _) =>
        {
            engine.Remove(member);
            if (written is not "null")
            {
                engine[member] = JsonNode.Parse(written);
            }
        });

        Assert.Null(read.Supply);
        Assert.Contains(read.Faults, fault => fault.Problem.Contains(said, StringComparison.Ordinal));
    }
}
