using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Cars;

namespace Tickover.Practice.Tests;

/// <summary>Plans of the samples, one of each layout.</summary>
internal static class Plans
{
    public static EnginePlan TwoBanks { get; } = OfCar("osprey-v8");

    public static EnginePlan InLine { get; } = OfCar("tern-2800");

    public static EnginePlan ConstantDepression { get; } = OfPlan("dunlin");

    public static EnginePlan MotorcycleFour { get; } = OfPlan("wigeon");

    public static IReadOnlyList<EnginePlan> All { get; } = [TwoBanks, InLine, ConstantDepression, MotorcycleFour];

    public static TheoryData<string> Names => [.. All.Select(p => p.Name)];

    public static EnginePlan Called(string name) => All.Single(p => string.Equals(p.Name, name, StringComparison.Ordinal));

    /// <summary>An engine with one fault of a kind, and its place.</summary>
    public static (PracticeEngine Engine, FaultPlace Place) With(EnginePlan plan, BalanceFault fault)
    {
        for (var seed = 0; ; seed++)
        {
            var engine = PracticeEngine.Start(plan, seed, 1);
            if (engine.Truth().Faults[0].Place is { } place && place.Fault == fault)
            {
                return (engine, place);
            }
        }
    }

    private static EnginePlan OfCar(string name) => PlanOfCar.Of(CarDocument.Read(Text($"{name}.car.json")).Car!);

    private static EnginePlan OfPlan(string name) => PlanDocument.Read(Text($"{name}.plan.json")).Plan!;

    private static string Text(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "samples", file));
}
