namespace Tickover.Physics.Tanks;

/// <summary>A shape, or why there is none.</summary>
/// <param name="Shape">The shape; null where there is a problem.</param>
/// <param name="Problem">What is wrong and what to do; null where there is a shape.</param>
/// <param name="Remark">What was done to it that its maker should know; null for nothing.</param>
public sealed record TankShapeResult(TankShape? Shape, string? Problem, string? Remark = null)
{
    /// <summary>A shape.</summary>
    /// <param name="shape">It.</param>
    /// <param name="remark">What was done to it; null for nothing.</param>
    /// <returns>The result.</returns>
    public static TankShapeResult Of(TankShape shape, string? remark = null) => new(shape, null, remark);

    /// <summary>No shape.</summary>
    /// <param name="problem">Why.</param>
    /// <returns>The result.</returns>
    public static TankShapeResult Refused(string problem) => new(null, problem);
}
