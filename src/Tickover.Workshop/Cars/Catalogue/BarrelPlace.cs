namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Where a barrel stands: how many share its air with it.</summary>
/// <param name="Shared">Whether the cylinders share their barrels.</param>
/// <param name="Barrels">Barrels that feed the same cylinders, itself included.</param>
/// <param name="Cylinders">Cylinders they feed.</param>
internal sealed record BarrelPlace(bool Shared, int Barrels, int Cylinders)
{
    /// <summary>One barrel on one cylinder.</summary>
    public static BarrelPlace OneEach { get; } = new(Shared: false, 1, 1);
}
