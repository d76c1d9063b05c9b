namespace Tickover.Browser.Tests;

/// <summary>One server and one browser for all tests, one test after the other, so that a measured time is of one trial only.</summary>
[CollectionDefinition(DisableParallelization = true)]
public sealed class OneBrowser : ICollectionFixture<Workshop>;
