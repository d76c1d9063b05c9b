namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Checks under one heading of the page.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Checks">The checks, in the order shown.</param>
public sealed record CheckGroup(string Title, IReadOnlyList<OutsideCheck> Checks);
