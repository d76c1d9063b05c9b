namespace Tickover.Physics.Gauges;

/// <summary>What may be wrong between the float and the needle.</summary>
public enum SenderFault
{
    /// <summary>Nothing: sender and gauge of one family, both working.</summary>
    None,

    /// <summary>The sender or its wire is open.</summary>
    Open,

    /// <summary>The sender or its wire is shorted to earth.</summary>
    Short,

    /// <summary>Resistance too much on the way: a poor earth, a bad joint.</summary>
    AddedResistance,

    /// <summary>Sender and gauge belong to different families.</summary>
    WrongFamily,

    /// <summary>The float does not move.</summary>
    StuckFloat,

    /// <summary>The float stops short of the top: a baffle, a wire, a bent arm.</summary>
    FouledHigh,

    /// <summary>The float stops short of the bottom.</summary>
    FouledLow,

    /// <summary>The arm was fitted the wrong way round.</summary>
    ReversedFloat,

    /// <summary>The stabiliser gives too little: low everywhere.</summary>
    VoltageLow,

    /// <summary>The stabiliser does not regulate, or its earth is off: high everywhere.</summary>
    VoltageHigh,

    /// <summary>The needle does not move though the sender does.</summary>
    StuckNeedle,

    /// <summary>A second sender in parallel halves the resistance.</summary>
    SecondInParallel,

    /// <summary>A second sender in series doubles the resistance.</summary>
    SecondInSeries,
}
