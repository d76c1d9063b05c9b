namespace Tickover.Web.Tests;

/// <summary>Tests that run while no other test does.</summary>
[CollectionDefinition(DisableParallelization = true)]
public sealed class Alone;
