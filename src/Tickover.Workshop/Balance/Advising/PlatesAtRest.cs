using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>How idle will read with the rods on: each carburettor rests on its stop or, further open, where its rod holds it.</summary>
/// <remarks>
/// The carburettor without a rod has no play and rests on its stop. By as much as another's plates lead it off idle, where no stop counts, they lead it at rest:
/// a degree that is lost among the readings at 1,500 rpm is half the limit at idle.
/// </remarks>
internal sealed class PlatesAtRest
{
    private readonly EnginePlan _plan;
    private readonly IReadOnlyList<double> _onStops;
    private readonly double _idleOverHeld;

    private PlatesAtRest(EnginePlan plan, IReadOnlyList<double> onStops, Condition idle, Condition held) =>
        (_plan, _onStops, _idleOverHeld) = (plan, onStops, idle.Nominal.FlowPerDegree / held.Nominal.FlowPerDegree);

    /// <summary>Of a model.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="model">What was learned.</param>
    /// <returns>Null where carburettors have no stops of their own, or were not read on them, or not off idle.</returns>
    public static PlatesAtRest? Of(EnginePlan plan, InfluenceModel model) =>
        plan.Layout == PlanLayout.TwoBanks && model.OnStops is { } levels && model.Idle is { } idle && model.Held.FirstOrDefault() is { } held ? new(plan, levels, idle, held) : null;

    /// <summary>Idle, barrel by barrel.</summary>
    /// <param name="held">Levels at the lowest held speed, kg/h.</param>
    /// <returns>kg/h.</returns>
    public double[] Levels(IReadOnlyList<double> held)
    {
        var leader = _plan.Carburettors[(_plan.Reference ?? 1) - 1];
        var (ahead, stop) = (Mean(leader, held), Mean(leader, _onStops));
        var levels = _onStops.ToArray();
        foreach (var carburettor in _plan.Carburettors)
        {
            var driven = stop + ((Mean(carburettor, held) - ahead) * _idleOverHeld);
            var lifted = Math.Max(0, driven - Mean(carburettor, _onStops));
            foreach (var barrel in carburettor.Barrels)
            {
                levels[barrel - 1] += lifted;
            }
        }

        return levels;
    }

    private static double Mean(PlanCarburettor carburettor, IReadOnlyList<double> levels) => carburettor.Barrels.Average(b => levels[b - 1]);
}
