namespace Tickover.Workshop.Exhaust;

/// <summary>A gas reading as somebody typed it or as a file has it: texts, not yet understood.</summary>
/// <remarks>Null, blank and dashes stand for "not read".</remarks>
public sealed record GasEntry
{
    /// <summary>CO, per cent by volume.</summary>
    public string? CarbonMonoxide { get; init; }

    /// <summary>HC as hexane, ppm.</summary>
    public string? Hydrocarbons { get; init; }

    /// <summary>CO₂, per cent by volume.</summary>
    public string? CarbonDioxide { get; init; }

    /// <summary>O₂, per cent by volume.</summary>
    public string? Oxygen { get; init; }

    /// <summary>λ the instrument shows; optional.</summary>
    public string? Lambda { get; init; }

    /// <summary>Engine speed, rpm; optional.</summary>
    public string? Speed { get; init; }

    /// <summary>Oil temperature, °C; optional.</summary>
    public string? Oil { get; init; }

    /// <summary>Reads it.</summary>
    /// <returns>A reading, or everything that is wrong; never throws.</returns>
    public GasEntryOutcome Read()
    {
        var text = new GasText();
        var monoxide = text.Needed(GasQuantity.CarbonMonoxide, CarbonMonoxide);
        var hydrocarbons = text.Needed(GasQuantity.Hydrocarbons, Hydrocarbons);
        var dioxide = text.Dioxide(CarbonDioxide, out var inTenths);
        var oxygen = text.Needed(GasQuantity.Oxygen, Oxygen);
        var lambda = text.Optional(GasQuantity.Lambda, Lambda);
        var speed = text.Optional(GasQuantity.Speed, Speed);
        var oil = text.Optional(GasQuantity.Oil, Oil);
        if (text.Complaints.Count > 0)
        {
            return new GasEntryOutcome(null, text.Complaints);
        }

        return new GasEntryOutcome(
            new GasReading
            {
                CarbonMonoxidePercent = monoxide,
                HydrocarbonsPpm = hydrocarbons,
                CarbonDioxidePercent = dioxide,
                OxygenPercent = oxygen,
                DioxideWasInTenths = inTenths,
                LambdaShown = lambda,
                LambdaStep = GasText.Step(Lambda),
                SpeedRpm = speed,
                OilCelsius = oil,
            },
            []);
    }
}
