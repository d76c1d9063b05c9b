using Tickover.Workshop.StripDown.Levels;

namespace Tickover.Web.StripDown;

/// <summary>A sheet of levels, worked out.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Answer">What it comes to.</param>
public sealed record LevelInHand(LevelSheet Sheet, LevelAnswer Answer);
