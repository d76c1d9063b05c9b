namespace Tickover.Workshop.FaultFinding;

/// <summary>A place on the drawing of the car, from the filler to the exhaust.</summary>
public enum FaultSpot
{
    /// <summary>Filler, its cap and the vent in it.</summary>
    Cap,

    /// <summary>Vent pipes of the tanks.</summary>
    Vent,

    /// <summary>The tanks and what is in them.</summary>
    Tank,

    /// <summary>Pick-up and strainer.</summary>
    Pickup,

    /// <summary>Pipe between the tanks.</summary>
    CrossPipe,

    /// <summary>Tank unit, its plate, wire and earth.</summary>
    Sender,

    /// <summary>Fuel gauge, its feed and stabiliser.</summary>
    Gauge,

    /// <summary>Pipes, hoses and taps from tank to pump.</summary>
    Pipe,

    /// <summary>Filters.</summary>
    Filter,

    /// <summary>Fuel pump, its feed and what lies behind it.</summary>
    Pump,

    /// <summary>Return line.</summary>
    Return,

    /// <summary>Float chamber, float and valve.</summary>
    Bowl,

    /// <summary>Idle and progression circuit with its screws.</summary>
    Idle,

    /// <summary>Choke, main jet, tube and corrector.</summary>
    Main,

    /// <summary>Accelerator pump.</summary>
    PumpJet,

    /// <summary>Throttle plate, spindle and stop.</summary>
    Plate,

    /// <summary>Choke or starter.</summary>
    Starter,

    /// <summary>Rods, levers and cable.</summary>
    Linkage,

    /// <summary>Joints and take-offs between carburettor and engine.</summary>
    Manifold,

    /// <summary>Air cleaner and trumpets.</summary>
    Cleaner,

    /// <summary>Piston of a constant-depression carburettor.</summary>
    Piston,

    /// <summary>Coil, distributor, leads and plugs.</summary>
    Ignition,

    /// <summary>Valves, cylinders, mounts.</summary>
    Engine,

    /// <summary>Exhaust.</summary>
    Exhaust,

    /// <summary>Battery, cables and earth straps.</summary>
    Battery,

    /// <summary>The measuring instrument.</summary>
    Meter,
}
