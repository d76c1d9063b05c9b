namespace Tickover.Physics.Breathing;

/// <summary>Air of one barrel over a cycle.</summary>
/// <param name="FlowKilogramsPerSecond">Flow into the engine at each step, kg/s.</param>
/// <param name="DepressionPascals">Depression in the auxiliary venturi below ambient at each step, Pa.</param>
/// <param name="DownstreamPascals">Absolute pressure behind the plate at each step, Pa.</param>
/// <param name="StepSeconds">Time between steps, s.</param>
public sealed record AirTrace(
    IReadOnlyList<double> FlowKilogramsPerSecond, IReadOnlyList<double> DepressionPascals, IReadOnlyList<double> DownstreamPascals, double StepSeconds);
