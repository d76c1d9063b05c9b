using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Web.StripDown;

/// <summary>A sheet of wear, worked out.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Answer">What it comes to.</param>
public sealed record WearInHand(WearSheet Sheet, WearAnswer Answer);
