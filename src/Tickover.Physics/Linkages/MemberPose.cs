namespace Tickover.Physics.Linkages;

/// <summary>How a member stands at one position of the pedal.</summary>
/// <param name="Rate">Turn of the driven shaft for a turn of the driving one, 1.</param>
/// <param name="PerSetting">Turn of the driven shaft for its setting: radians per metre of rod; 1 for a coupling's offset.</param>
/// <param name="DriverSine">How squarely the driving lever pulls, −1 to 1; 1 for a coupling.</param>
/// <param name="DrivenSine">How squarely the driven lever is pulled, −1 to 1; 1 for a coupling.</param>
public readonly record struct MemberPose(double Rate, double PerSetting, double DriverSine, double DrivenSine);
