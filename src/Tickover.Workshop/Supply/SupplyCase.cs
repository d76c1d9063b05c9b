using Tickover.Physics.Supply;

namespace Tickover.Workshop.Supply;

/// <summary>A supply in one case.</summary>
/// <param name="Setting">The case.</param>
/// <param name="Point">The line at work in it.</param>
/// <param name="Margin">How much more than the demand it carries.</param>
public sealed record SupplyCase(SupplyCaseSetting Setting, SupplyPoint Point, SupplyMargin Margin)
{
    /// <summary>The case in words, such as "full load".</summary>
    public string Name => SupplyWords.Case(Setting.Kind);
}
