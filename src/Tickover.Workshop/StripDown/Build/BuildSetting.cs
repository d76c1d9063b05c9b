namespace Tickover.Workshop.StripDown.Build;

/// <summary>One thing to set on the bench.</summary>
/// <param name="What">What to set.</param>
/// <param name="Value">To what, with its unit.</param>
/// <param name="Origin">Where the figure comes from.</param>
/// <param name="How">How to set it.</param>
public sealed record BuildSetting(string What, string Value, string Origin, string How);
