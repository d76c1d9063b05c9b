namespace Tickover.Workshop.Exhaust;

/// <summary>Where a gas reading stops being ordinary. Reasons: docs/decisions/0100-sampling-faults-before-mixture.md.</summary>
internal static class GasThresholds
{
    /// <summary>Zeros wander by this much: O₂ and CO in per cent, HC in ppm.</summary>
    internal const double OxygenZero = -0.1, MonoxideZero = -0.05, HydrocarbonsZero = -15;

    /// <summary>All gases together may miss 100 % by this, per cent: a class 1 analyser's CO₂ alone moves it by 3 to 5.</summary>
    internal const double SumOff = 7;

    /// <summary>Per cent of the dry total for one per cent of CO₂.</summary>
    internal const double SumPerDioxide = 6.4;

    /// <summary>O₂ that even a sound engine leaves, and HC likewise: per cent, ppm.</summary>
    internal const double UsualOxygen = 0.5, UsualHydrocarbons = 300;

    /// <summary>O₂ that is more than usual, per cent.</summary>
    internal const double RaisedOxygen = 1.2;

    /// <summary>HC and O₂ from which charges may be passing unburnt, ppm and per cent.</summary>
    internal const double MisfireHydrocarbons = 800, MisfireOxygen = 1.5;

    /// <summary>HC a missed charge brings for each per cent of O₂, ppm: 1,270 worked out at λ 1, half of it seen by infrared, and a margin.</summary>
    internal const double MisfirePpmPerOxygen = 300;

    /// <summary>HC at idle beyond which cars in use are failed (MOT inspection manual), ppm.</summary>
    internal const double HighHydrocarbons = 1200;

    /// <summary>Air in the sample that a class 1 analyser's errors do not explain, per cent.</summary>
    internal const double AirShare = 6;

    /// <summary>λ beyond which no carburetted engine runs smoothly (18.5 to 1, Schey and Clark, NACA 1938).</summary>
    internal const double LeanestSmooth = 1.27;

    /// <summary>λ from which lean deserves the question whether it is a leak.</summary>
    internal const double Lean = 1.05;

    /// <summary>The formula's difference from instruments: twice the 99 % quantile of 11,111 open inspection records.</summary>
    internal const double LambdaOff = 0.01;

    private const double TellingMonoxide = 1;

    /// <summary>Whether there is enough CO for its ratio to CO₂ to say how rich it was, whatever air came in.</summary>
    internal static bool MonoxideTells(GasReading reading) => reading.CarbonMonoxidePercent >= TellingMonoxide;
}
