namespace Tickover.Physics.Supply;

/// <summary>What to look at next on a fuel line.</summary>
public enum SupplyCheckKind
{
    /// <summary>Read the pressure with the needles shut.</summary>
    ReadDeadHead = 0,

    /// <summary>Time the flow before the filter.</summary>
    ReadFlowBeforeFilter = 1,

    /// <summary>Time the flow at the last chamber.</summary>
    ReadFlowAtChamber = 2,

    /// <summary>Read the suction at the pump's inlet.</summary>
    ReadSuction = 3,

    /// <summary>Watch the pressure for a minute after the pump stops.</summary>
    ReadPressureHeld = 4,

    /// <summary>Read the voltage at the pump.</summary>
    ReadPumpVolts = 5,

    /// <summary>Time the flow again with the filler cap off: does it recover?</summary>
    OpenFillerCap = 6,

    /// <summary>Look for bubbles in a clear hose behind the pump.</summary>
    LookForBubbles = 7,

    /// <summary>Shut the line behind the pump when it stops: does the pressure on the pump's side hold?</summary>
    ShutBehindPump = 8,

    /// <summary>Shut the return: does the pressure rise?</summary>
    ShutReturn = 9,

    /// <summary>Feed the pump from a can on a short wide hose: does the flow recover?</summary>
    FeedFromCan = 10,
}
