namespace Tickover.Instruments.Logs;

/// <summary>What a column of a log holds.</summary>
public enum LogQuantity
{
    /// <summary>Nothing that is used here.</summary>
    Ignored,

    /// <summary>Time of the row.</summary>
    Time,

    /// <summary>Engine speed.</summary>
    EngineSpeed,

    /// <summary>Throttle opening.</summary>
    Throttle,

    /// <summary>Pressure behind the plates, absolute, over or under the atmosphere.</summary>
    ManifoldPressure,

    /// <summary>λ, or an air/fuel ratio that stands for it.</summary>
    Lambda,

    /// <summary>Coolant temperature.</summary>
    CoolantTemperature,

    /// <summary>Oil temperature.</summary>
    OilTemperature,

    /// <summary>Temperature of the air drawn in.</summary>
    AirTemperature,

    /// <summary>Pressure of the fuel over the atmosphere.</summary>
    FuelPressure,

    /// <summary>Speed on the road.</summary>
    RoadSpeed,
}
