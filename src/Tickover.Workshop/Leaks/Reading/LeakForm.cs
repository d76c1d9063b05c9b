using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Leaks.Reading;

/// <summary>The members of a leak document and their limits.</summary>
internal static class LeakForm
{
    public const string Format = "tickover-leak-1";

    public const int MostReadings = 500;

    public const double UsualWithin = 5;

    public const double UsualThermometer = 0.1;

    public const double UsualBarometer = 1013.25;

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "note", "volume", "panel", "gauge", "thermometer", "barometer", "readings", "limit"];

    public static IReadOnlyList<string> Volume { get; } = ["note", "litres", "within"];

    public static IReadOnlyList<string> Panel { get; } = ["note", "metal", "sides", "thickness", "stress"];

    public static IReadOnlyList<string> Gauge { get; } = ["note", "unit", "error"];

    public static IReadOnlyList<string> Thermometer { get; } = ["note", "error", "drift"];

    public static IReadOnlyList<string> Moment { get; } = ["note", "minutes", "pressure", "temperature", "barometer"];

    public static NumberLimit Litres { get; } = new(0.2, 400, "l", "The gas in the tank") { WhatToDo = "Write the litres the empty tank holds." };

    public static NumberLimit Within { get; } = new(0, 50, "%", "How far the litres may be off") { WhatToDo = "Write it in per cent." };

    public static NumberLimit Side { get; } = new(20, 1500, "mm", "The side of the panel") { WhatToDo = "Measure the largest flat panel between seams or swages, in mm." };

    public static NumberLimit Thickness { get; } = new(0.2, 6, "mm", "What is left of the sheet") { WhatToDo = "Measure the wall left, in mm." };

    public static NumberLimit Stress { get; } = new(5, 300, "MPa", "The stress the sheet may bear") { WhatToDo = "Leave it out where you do not know it." };

    public static NumberLimit Kelvins { get; } = new(0, 10, "K", "How far the temperature may be off") { WhatToDo = "Write it in degrees Celsius or kelvins." };

    public static NumberLimit Minutes { get; } = new(0, 100_000, "min", "The time") { WhatToDo = "Write minutes from the beginning of the test." };

    public static NumberLimit Celsius { get; } = new(-20, 60, "°C", "The temperature") { WhatToDo = "Temperatures are in degrees Celsius." };

    public static NumberLimit Barometer { get; } = new(850, 1085, "mbar", "The barometer") { WhatToDo = "Write the pressure of the air where you are, not brought down to sea level, in mbar or hPa." };

    public static NumberLimit Limit { get; } = new(1e-6, 100, "mbar l/s", "The leak that has to be seen") { WhatToDo = "Write it in mbar l/s; 0.1 is a small hole." };

    /// <summary>Limits on a pressure read, in the gauge's own unit.</summary>
    public static NumberLimit Pressure(PressureUnit unit) => new(-1000 / unit.Pascals, Math.Round(200_000 / unit.Pascals, 3), unit.Name, "The pressure") { WhatToDo = $"Pressures are above the air around, in {unit.Name} as the gauge says." };

    /// <summary>Limits on the gauge's error, in its own unit.</summary>
    public static NumberLimit Error(PressureUnit unit) => new(0.1 / unit.Pascals, Math.Round(20_000 / unit.Pascals, 3), unit.Name, "How far a reading of the gauge may be off") { WhatToDo = $"Half the gauge's smallest division, in {unit.Name}." };
}
