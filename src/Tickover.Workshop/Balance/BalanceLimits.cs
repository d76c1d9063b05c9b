namespace Tickover.Workshop.Balance;

/// <summary>How far barrels may lie from their mean; looser at idle, tighter off idle. Common practice (reference, accepted spreads); editable.</summary>
public sealed record BalanceLimits
{
    /// <summary>At idle, kg/h off the mean.</summary>
    public double IdleKilogramsPerHour { get; init; } = 0.5;

    /// <summary>At idle, part of the mean; the wider of the two counts.</summary>
    public double IdlePart { get; init; } = 0.10;

    /// <summary>At a held speed, part of the mean.</summary>
    public double HeldPart { get; init; } = 0.05;

    /// <summary>Means of the banks apart at idle, part of the mean.</summary>
    public double BankIdlePart { get; init; } = 0.05;

    /// <summary>Means of the banks apart at a held speed, part of the mean.</summary>
    public double BankHeldPart { get; init; } = 0.03;

    /// <summary>More than this between the barrels of a carburettor is no matter for a by-pass: strip it. kg/h.</summary>
    public double LargestBypass { get; init; } = 1.0;

    /// <summary>By so much the first barrel may have moved until it is read again, kg/h.</summary>
    public double IdleDrift { get; init; } = 0.25;

    /// <summary>The same as a part of the reading; the wider of the two counts.</summary>
    public double DriftPart { get; init; } = 0.05;

    /// <summary>Where the limits come from.</summary>
    public string Origin { get; init; } = Visits.Measures.Catalogue.Origins.Practice;

    /// <summary>The limits for an engine.</summary>
    /// <param name="plan">The engine.</param>
    /// <returns>The trade's; on a motorcycle half a kg/h would be a quarter of the air, so that only the part counts.</returns>
    public static BalanceLimits For(Plans.EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Layout == Plans.PlanLayout.MotorcycleFour ? new BalanceLimits { IdleKilogramsPerHour = 0, IdleDrift = 0.15 } : new BalanceLimits();
    }

    /// <summary>The limit off the mean.</summary>
    /// <param name="idle">Whether at idle.</param>
    /// <param name="mean">Mean of the barrels, kg/h.</param>
    /// <returns>kg/h.</returns>
    public double OffMean(bool idle, double mean) => idle ? Math.Max(IdleKilogramsPerHour, IdlePart * mean) : HeldPart * mean;

    /// <summary>How far the means of the banks may be apart.</summary>
    /// <param name="idle">Whether at idle.</param>
    /// <param name="mean">Mean, kg/h.</param>
    /// <returns>kg/h.</returns>
    public double BanksApart(bool idle, double mean) => (idle ? BankIdlePart : BankHeldPart) * mean;

    /// <summary>How far the first barrel may move within a round.</summary>
    /// <param name="air">Its reading, kg/h.</param>
    /// <returns>kg/h.</returns>
    public double Drift(double air) => Math.Max(IdleDrift, DriftPart * air);
}
