namespace Tickover.Workshop.Logs;

/// <summary>A part of a log with one regime.</summary>
/// <param name="StartSeconds">Its start, s.</param>
/// <param name="EndSeconds">Its end, s.</param>
/// <param name="Regime">What the engine was doing.</param>
/// <param name="IsSteady">Whether speed and opening stood still long enough for a point.</param>
public sealed record LogStretch(double StartSeconds, double EndSeconds, Regime Regime, bool IsSteady);
