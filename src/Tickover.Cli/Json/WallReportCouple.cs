namespace Tickover.Cli.Json;

/// <summary>A metal in contact, in a <see cref="WallReport"/>.</summary>
/// <param name="Where">What it is.</param>
/// <param name="Metal">Its metal.</param>
/// <param name="DifferenceVolts">Above zero the wall is eaten.</param>
/// <param name="LimitVolts">What is let pass.</param>
/// <param name="IsCompatible">Whether it is let pass.</param>
/// <param name="AreaEffect">How many times faster, or null.</param>
/// <param name="MillimetresPerYear">Even loss of the wall, low and high, or null.</param>
/// <param name="Words">What to do.</param>
internal sealed record WallReportCouple(
    string Where, string Metal, double DifferenceVolts, double LimitVolts, bool IsCompatible, double? AreaEffect, IReadOnlyList<double>? MillimetresPerYear, string Words);
