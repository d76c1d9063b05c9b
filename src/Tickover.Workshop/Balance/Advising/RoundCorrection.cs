namespace Tickover.Workshop.Balance.Advising;

/// <summary>Frees the air readings of a round of speed and of the drift that the first barrel, read again last, shows.</summary>
internal static class RoundCorrection
{
    private const double ExponentDeviation = 0.5;
    private const double OrdinaryDrift = 0.03;              // part of the flow over a round; assumed
    private const double LargestSpeedFactor = 1.25;         // beyond that the rpm is a slip of the pen, not drift

    /// <summary>Corrects a round.</summary>
    /// <param name="round">The round.</param>
    /// <param name="meter">What the meter is good to.</param>
    /// <returns>Barrels with air, in order of number; the later of two readings counts.</returns>
    public static IReadOnlyList<CorrectedReading> Of(BalanceRound round, MeterSettings meter)
    {
        var read = round.Readings.Where(r => r.Air is { } air && double.IsFinite(air)).ToList();
        if (read.Count == 0)
        {
            return [];
        }

        var speeds = read.Select(r => r.Rpm).OfType<double>().Where(r => r > 0).ToList();
        var reference = speeds.Count > 0 ? speeds.Average() : 0;
        var exponent = round.IsIdle ? meter.IdleSpeedExponent : meter.HeldSpeedExponent;
        var drift = Drift(round, read[0], reference, exponent, meter);
        var corrected = new SortedDictionary<int, CorrectedReading>();
        for (var i = 0; i < read.Count; i++)
        {
            var air = read[i].Air!.Value;
            var (factor, unsure) = Speed(read[i].Rpm, reference, exponent);
            var at = read.Count > 1 ? ((double)i / read.Count) - 0.5 : 0;
            var deviation = meter.AirDeviation(air);
            corrected[read[i].Barrel] = new(read[i].Barrel, air * factor * (1 - (drift.Part * at)), (deviation * deviation) + Square(air * unsure) + Square(air * at * drift.Deviation));
        }

        return [.. corrected.Values];
    }

    // what the first barrel moved, less what noise alone would: a part of the flow over the whole round
    private static (double Part, double Deviation) Drift(BalanceRound round, BarrelReading first, double reference, double exponent, MeterSettings meter)
    {
        if (round.Again is not { Air: { } again } || first.Air is not > 0)
        {
            return (0, OrdinaryDrift);
        }

        var (before, after) = (first.Air.Value * Speed(first.Rpm, reference, exponent).Factor, again * Speed(round.Again.Rpm, reference, exponent).Factor);
        var noise = 2 * Square(meter.AirDeviation(before) / before);
        var known = Square(OrdinaryDrift) / (Square(OrdinaryDrift) + noise);
        return (known * (after - before) / before, OrdinaryDrift * Math.Sqrt(1 - known));
    }

    private static (double Factor, double Unsure) Speed(double? rpm, double reference, double exponent)
    {
        if (rpm is not > 0 || reference <= 0)
        {
            return (1, 0);
        }

        var ratio = Math.Clamp(reference / rpm.Value, 1 / LargestSpeedFactor, LargestSpeedFactor);
        return (Math.Pow(ratio, exponent), ExponentDeviation * Math.Abs(Math.Log(ratio)));
    }

    private static double Square(double value) => value * value;
}
