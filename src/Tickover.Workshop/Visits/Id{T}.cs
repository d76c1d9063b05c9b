namespace Tickover.Workshop.Visits;

/// <summary>The identifier of a stored thing, typed by what it names so that a visit is never taken for a car.</summary>
/// <typeparam name="T">What is named.</typeparam>
/// <param name="Value">The number; all zeros names nothing and is refused where something is kept.</param>
public readonly record struct Id<T>(Guid Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value.ToString("N");
}
