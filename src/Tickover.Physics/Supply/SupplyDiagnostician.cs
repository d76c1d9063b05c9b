namespace Tickover.Physics.Supply;

/// <summary>Weighs the causes of a fuel line's trouble by what its own model says each would show.</summary>
/// <remarks>
/// Bayes' rule over faults in six sizes each, with Gaussian errors of reading and model. How often each fault is met is assumed, as are the
/// sizes: the order of the causes stands on the readings, the second digit of a probability on nothing.
/// </remarks>
public static class SupplyDiagnostician
{
    /// <summary>What a look must be expected to tell to be worth naming, bits.</summary>
    public const double LeastBits = 0.02;

    // How often each is met in cars that have stood; assumed.
    private static readonly Dictionary<SupplyFaultKind, double> Priors = new()
    {
        [SupplyFaultKind.None] = 0.20,
        [SupplyFaultKind.FilterLoaded] = 0.18,
        [SupplyFaultKind.SuctionRestricted] = 0.11,
        [SupplyFaultKind.DeliveryRestricted] = 0.05,
        [SupplyFaultKind.AirLeak] = 0.10,
        [SupplyFaultKind.PumpWorn] = 0.11,
        [SupplyFaultKind.PumpValvesLeak] = 0.07,
        [SupplyFaultKind.FloatValveLeaks] = 0.08,
        [SupplyFaultKind.VentStopped] = 0.05,
        [SupplyFaultKind.LowVoltage] = 0.07,
        [SupplyFaultKind.RegulatorLow] = 0.05,
        [SupplyFaultKind.ReturnWide] = 0.03,
    };

    /// <summary>Says what readings of a line point to.</summary>
    /// <param name="test">The line as it should be and how it was tested.</param>
    /// <param name="readings">What was read, in SI; any of them.</param>
    /// <returns>The causes and the next look.</returns>
    /// <exception cref="ArgumentException">The test has faults or a reading is not a number.</exception>
    public static SupplyDiagnosis Diagnose(SupplyTest test, IReadOnlyDictionary<SupplyReadingKind, double> readings)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(readings);
        if (test.Faults() is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(test));
        }

        foreach (var (kind, value) in readings)
        {
            Precondition.Finite(value, kind.ToString());
        }

        var good = SupplyForecast.Of(test, test.Line);
        var cases = FaultyLine.All(test, good[SupplyReadingKind.FlowAtChamber]).Select(faulty => new SupplyCase(faulty, Forecast(test, faulty))).ToList();
        foreach (var group in cases.GroupBy(one => one.Kind))
        {
            var prior = Priors[group.Key] / group.Count();
            foreach (var one in group)
            {
                one.Weight = Math.Log(prior) + one.LogLikelihood(readings);
            }
        }

        return Weighed(cases, good, readings);
    }

    private static SupplyDiagnosis Weighed(List<SupplyCase> cases, Dictionary<SupplyReadingKind, double> good, IReadOnlyDictionary<SupplyReadingKind, double> readings)
    {
        var highest = cases.Max(one => one.Weight);
        var sum = cases.Sum(one => Math.Exp(one.Weight - highest));
        foreach (var one in cases)
        {
            one.Weight = Math.Exp(one.Weight - highest) / sum; // supply (33)
        }

        var causes = cases.GroupBy(one => one.Kind)
            .Select(group => new SupplyCause(group.Key, group.Sum(one => one.Weight), group.MaxBy(one => one.Weight)!.Forecast))
            .OrderByDescending(cause => cause.Probability)
            .ToList();
        var (next, bits) = SupplyLook.Best(cases, readings);
        return new SupplyDiagnosis
        {
            Causes = causes,
            Expected = good,
            Next = bits >= LeastBits ? next : null,
            NextBits = bits,
            Misfit = cases.Where(one => one.Kind == causes[0].Kind).Min(one => one.Misfit(readings)),
        };
    }

    private static Dictionary<SupplyReadingKind, double> Forecast(SupplyTest test, FaultyLine faulty)
    {
        var forecast = SupplyForecast.Of(test, faulty.Line);
        forecast[SupplyReadingKind.Suction] *= faulty.SuctionFactor;
        forecast[SupplyReadingKind.PressureHeld] = faulty.PressureHeld ?? forecast[SupplyReadingKind.PressureHeld];
        if (forecast.TryGetValue(SupplyReadingKind.PumpVolts, out var volts))
        {
            forecast[SupplyReadingKind.PumpVolts] = volts * faulty.VoltsFactor;
        }

        return forecast;
    }
}
