namespace Tickover.Workshop.StripDown.Levels;

/// <summary>Where the fuel of one carburettor stands, and what that is worth.</summary>
public sealed record LevelVerdict
{
    /// <summary>The float as measured.</summary>
    public required MeasuredFloat Float { get; init; }

    /// <summary>How deep the float lies in the fuel while the engine idles, mm; null where it cannot shut the needle.</summary>
    public double? Sunk { get; init; }

    /// <summary>Fuel below the lid by the dry height, while the engine idles, mm; null where it floods.</summary>
    public Band? Computed { get; init; }

    /// <summary>Fuel below the lid that counts: the wet level where it was measured, else by the dry height, mm; null where it floods.</summary>
    public Band? Level { get; init; }

    /// <summary>What of the band is not shared with the rest of the set, ± mm.</summary>
    public double OwnBand { get; init; }

    /// <summary>How much higher the fuel stands with nothing taken out and the pump at its highest pressure, mm; null where it floods then.</summary>
    public double? RiseAtDeadHead { get; init; }

    /// <summary>Height of the nozzle's lip over the fuel, mm; null where the nozzle is not told.</summary>
    public double? Lip { get; init; }

    /// <summary>How much higher than wanted it stands, mm; negative for lower; null where it floods.</summary>
    public double? Off { get; init; }

    /// <summary>How far the wet level lies above the one by the dry height, mm; null where there are not both.</summary>
    public double? WetOverDry { get; init; }

    /// <summary>Bend of the tang at the needle that puts it right, mm; zero where nothing is to be done.</summary>
    public double Tang { get; init; }

    /// <summary>Pressure at which it spills with nothing taken out, kPa.</summary>
    public double Flooding { get; init; }

    /// <summary>Heavier than the middle of the set, g.</summary>
    public double MassOff { get; init; }

    /// <summary>Whether its mass is outside the limit.</summary>
    public bool IsMassOff { get; init; }

    /// <summary>What its deviation does to the fuel at the signal named, as a part; null where the lip is not known or nothing would flow.</summary>
    public double? FuelPart { get; init; }

    /// <summary>How it stands to the set.</summary>
    public LevelFinding Finding { get; init; }

    /// <summary>The same in words, with what to do.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Whether something must be done.</summary>
    public bool IsNo => Finding is LevelFinding.High or LevelFinding.Low or LevelFinding.Floods || IsMassOff;
}
