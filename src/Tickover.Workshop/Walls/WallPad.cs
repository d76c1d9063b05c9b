namespace Tickover.Workshop.Walls;

/// <summary>A pad or strap on a wall.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Box">Where it lies, mm.</param>
public sealed record WallPad(string Name, WallBox Box);
