namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What a barrel's leaks come to together.</summary>
/// <param name="Barrel">The barrel.</param>
/// <param name="KilogramsAnHour">Air that the plate cannot shut off, kg/h.</param>
/// <param name="Share">The same as a part of its idle air, 1.</param>
/// <param name="PlateDegrees">How far the plate then stands off its seat at idle, degrees; null where it cannot be told, zero where it has to be quite shut.</param>
/// <param name="OverMiddle">Leaks more than the middle barrel, kg/h.</param>
/// <param name="Worst">The worst grade of anything on it.</param>
/// <param name="Words">In a sentence.</param>
public sealed record WearBarrel(WornBarrel Barrel, double KilogramsAnHour, double Share, double? PlateDegrees, double OverMiddle, WearGrade Worst, string Words);
