using Tickover.Workshop.Visits.Measures.Units;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>Reads what an instrument is good to, such as "±0.25 kg/h", "±2 %" or "±0.25 kg/h or ±5 %".</summary>
public static class GoodToText
{
    private const int LongestText = 200;

    /// <summary>Words that make a per cent one of the reading even where the measure itself is in per cent.</summary>
    private static readonly string[] OfReading = ["of reading", "of the reading", "of value"];

    /// <summary>Reads the text for one measure; never throws for what somebody typed.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="goodTo">The text of <see cref="Instrument.GoodTo"/>; parts for other quantities are parted by ";".</param>
    /// <returns>The accuracy; null where the text says nothing for this quantity.</returns>
    public static Accuracy? Read(MeasureDefinition measure, string? goodTo)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (!measure.IsNumber || string.IsNullOrWhiteSpace(goodTo) || goodTo.Length > LongestText)
        {
            return null;
        }

        return goodTo.Split(';').Select(part => Alternatives(measure, part)).FirstOrDefault(a => a is not null);
    }

    private static Accuracy? Alternatives(MeasureDefinition measure, string text)
    {
        var parts = text.Split(" or ", StringSplitOptions.RemoveEmptyEntries).Select(p => One(measure, p)).ToList();
        return parts.Count == 0 || parts.Exists(p => p is null) ? null : new Accuracy(parts.Max(p => p!.Si), parts.Max(p => p!.PartOfReading));
    }

    private static Accuracy? One(MeasureDefinition measure, string text)
    {
        var plain = TypedNumber.Plain(text.Replace("±", " ", StringComparison.Ordinal).Replace("+/-", " ", StringComparison.Ordinal));
        var ofReading = OfReading.FirstOrDefault(w => plain.EndsWith(w, StringComparison.OrdinalIgnoreCase));
        if (TypedNumber.Read(ofReading is null ? plain : plain[..^ofReading.Length].Trim()) is not { Value: > 0 and < 1e9 } number)
        {
            return null;
        }

        if (number.Unit is "%" && (ofReading is not null || QuantityUnits.Written(measure.Quantity, "%") is null))
        {
            return new Accuracy(0, number.Value / 100);
        }

        var unit = ofReading is not null || (number.Unit.Length == 0 && measure.MetricUnit.Length > 0) ? null : QuantityUnits.Written(measure.Quantity, number.Unit);

        // A temperature's zero is no amount, so an amount is a difference.
        return unit is null ? null : new Accuracy(Math.Abs(unit.ToSi(number.Value) - unit.ToSi(0)), 0);
    }
}
