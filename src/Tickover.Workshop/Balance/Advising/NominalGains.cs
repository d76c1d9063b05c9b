using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>What a turn should do before anybody has turned it: the geometry of nearly shut plates and of ordinary screws and levers.</summary>
internal sealed class NominalGains
{
    /// <summary>Part of a gain that is not known beforehand: other pitches, levers and discharge.</summary>
    public const double Unsure = 0.35;

    private const double StopDegreesATurn = 1.76;       // 0.8 mm pitch on 26 mm of lever; common practice
    private const double CouplingDegreesATurn = 1.3;    // finer threads, 0.5 to 0.8 mm, on the same lever; common practice
    private const double RodDegreesATurn = 0.83;        // 0.8 mm a turn on 55 mm levers; common practice
    private const double ClampDegreesATurn = 3;         // the fork of the clamp moved a millimetre or so; assumed
    private const double BypassIdle = 0.5;              // kg/h a turn at idle; common practice
    private const double BypassHeld = 0.4;              // the same at a held speed: less depression
    private const double SpeedCoupling = -0.04;         // more air elsewhere: a little more speed and depression, hardly more flow (assumed)
    private const double SharedCoupling = -0.6;         // on one manifold what one gains the other partly gives back (assumed)
    private const double SecondsAnHour = 3600;

    private readonly EnginePlan _plan;
    private readonly double _mean;
    private readonly bool _idle;
    private readonly double _perDegree;

    /// <summary>Begins for a condition.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="idle">Whether at idle.</param>
    /// <param name="mean">Mean air of the barrels there, kg/h.</param>
    public NominalGains(EnginePlan plan, bool idle, double mean)
    {
        (_plan, _idle, _mean) = (plan, idle, Math.Max(mean, 0.5));
        _perDegree = PerDegree(_mean);
    }

    /// <summary>kg/h a degree of plate at the mean.</summary>
    public double FlowPerDegree => _perDegree;

    /// <summary>kg/h a degree of plate at some airflow.</summary>
    /// <param name="air">kg/h.</param>
    /// <returns>kg/h a degree.</returns>
    public double PerDegree(double air) =>
        new NearlyShutPlate { BoreMetres = _plan.ThrottleBoreMillimetres / 1000, ClosedAngleRadians = _plan.ClosedAngleDegrees * Math.PI / 180 }.FlowPerDegree(Math.Max(air, 0.5) / SecondsAnHour) * SecondsAnHour;

    /// <summary>Change of its own barrels' air a turn, kg/h; zero where it does nothing here.</summary>
    /// <param name="adjuster">The adjuster.</param>
    /// <returns>kg/h a turn.</returns>
    public double Own(Adjuster adjuster) => adjuster.Kind switch
    {
        AdjusterKind.StopScrew or AdjusterKind.MasterStop => _idle ? StopDegreesATurn * _perDegree : 0,
        AdjusterKind.BypassScrew => _idle ? BypassIdle : BypassHeld,
        AdjusterKind.CouplingScrew when _plan.Layout == PlanLayout.ConstantDepression => _idle ? 0 : ClampDegreesATurn * _perDegree,
        AdjusterKind.CouplingScrew => CouplingDegreesATurn * _perDegree,
        AdjusterKind.LinkRod or AdjusterKind.BankRod => _idle ? 0 : RodDegreesATurn * _perDegree,
        _ => 0,
    };

    /// <summary>Mean and variance of what a turn does to one barrel.</summary>
    /// <param name="adjuster">The adjuster.</param>
    /// <param name="barrel">Number of the barrel.</param>
    /// <returns>kg/h a turn, and its variance.</returns>
    public (double Mean, double Variance) For(Adjuster adjuster, int barrel)
    {
        var own = Own(adjuster);
        var mine = adjuster.Barrels.Contains(barrel);
        var share = (double)adjuster.Barrels.Count / _plan.Barrels.Count;

        // a speed is held by the whole linkage: what one set gains all give back
        var shared = _plan.Layout == PlanLayout.ConstantDepression ? SharedCoupling : SpeedCoupling;
        var rest = _idle ? shared * share * own : -share * own;
        var mean = (mine ? own : 0) + rest;
        var deviation = mine ? Unsure * own : 0.5 * Math.Abs(rest);
        return (mean, Square(deviation) + Square(1e-3));
    }

    private static double Square(double value) => value * value;
}
