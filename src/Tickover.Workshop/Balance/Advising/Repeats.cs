namespace Tickover.Workshop.Balance.Advising;

/// <summary>What this meter on this car repeats to, learned from readings of the same barrel with nothing moved between.</summary>
internal static class Repeats
{
    private const double PriorWeight = 8;                   // the instrument's own figure counts as so many repeats
    private const double Wildest = 4;                       // beyond so many standard deviations it is a slip, not noise

    /// <summary>The meter as the repeats show it.</summary>
    /// <param name="book">The book.</param>
    /// <returns>Settings with the learned standard deviation.</returns>
    public static MeterSettings Learn(BalanceBook book)
    {
        var (sum, count) = (PriorWeight, PriorWeight);
        var last = new Dictionary<(int Condition, int Barrel), double>();
        foreach (var step in book.Steps)
        {
            if (step is not RoundRead { Round: var round })
            {
                if (step is not LookedAt)
                {
                    last.Clear();
                }

                continue;
            }

            foreach (var reading in round.Readings.Append(round.Again).OfType<BarrelReading>().Where(r => r.Air is > 0))
            {
                var key = (InfluenceModel.Key(round.HeldRpm), reading.Barrel);
                var air = reading.Air!.Value;
                if (last.TryGetValue(key, out var before) && Math.Abs(air - before) / book.Meter.AirDeviation(air) is var apart && apart < Wildest * Math.Sqrt(2))
                {
                    (sum, count) = (sum + (apart * apart / 2), count + 1);
                }

                last[key] = air;
            }
        }

        var factor = Math.Clamp(Math.Sqrt(sum / count), 0.5, 3);
        return book.Meter with { AirKilogramsPerHour = book.Meter.AirKilogramsPerHour * factor, AirPart = book.Meter.AirPart * factor };
    }
}
