namespace Tickover.Workshop.Supply;

/// <summary>What can hurt whoever opens a fuel line; shown with every answer about one.</summary>
public static class SupplyCautions
{
    /// <summary>The cautions, the gravest first.</summary>
    public static IReadOnlyList<string> Lines { get; } =
    [
        "Petrol vapour burns and kills. Before a line is opened: engine cold, no flame, spark or heater near, doors open, extinguisher at hand, and the pump's current off until the can stands ready.",
        "Fuel is timed only into a closed can bonded to the car, never into an open one; eyes and hands covered.",
        "A line under pressure is let down first. After the work look at every joint with the pump running before the engine is started.",
        "Local rules on petrol in workshops, and the maker's figures, come before anything said here.",
    ];
}
