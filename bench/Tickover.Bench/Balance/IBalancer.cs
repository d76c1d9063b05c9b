namespace Tickover.Bench.Balance;

/// <summary>A way of balancing: works on an engine by readings only, until it holds it for done or gives up. One for each engine, for it may remember.</summary>
internal interface IBalancer
{
    /// <summary>Name in the table.</summary>
    string Name { get; }

    /// <summary>Balances an engine.</summary>
    /// <param name="engine">The engine; it counts what is done and shows no truth.</param>
    /// <returns>Which faults it suspected.</returns>
    BalancerSuspicion Balance(Workbench engine);
}
