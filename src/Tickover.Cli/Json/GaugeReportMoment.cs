namespace Tickover.Cli.Json;

/// <summary>A moment of <see cref="GaugeReport"/>: litres, ohms, and flow to the right in litres a minute.</summary>
internal sealed record GaugeReportMoment(
    double Seconds, double LeftLitres, double RightLitres, double FlowToRight, double Ohms, double Needle, double NeedleLitres, double EstimateLitres, double LowLitres, double HighLitres, bool Lamp, bool PickUpCovered);
