namespace Tickover.Reports.HandOver;

/// <summary>A tank in the picture of the gauge.</summary>
/// <param name="Name">What it is called, such as "left".</param>
/// <param name="Holds">What it holds, such as "25 L"; empty where not measured.</param>
/// <param name="HasFloat">Whether the float that moves the needle sits in it.</param>
public sealed record GaugeVessel(string Name, string Holds, bool HasFloat);
