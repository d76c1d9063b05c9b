namespace Tickover.Workshop.Balance.Advising;

/// <summary>One reading the faults are weighed by.</summary>
/// <param name="Kind">What was read.</param>
/// <param name="Condition">Where: <see cref="InfluenceModel.Key"/>.</param>
/// <param name="Barrel">Number of the barrel.</param>
/// <param name="Value">Reading less the mean of its block, kg/h, kPa, lambda or °C.</param>
/// <param name="Deviation">Standard deviation of the reading.</param>
/// <param name="Mean">Mean of its block.</param>
/// <param name="IsRepeat">Whether it is the difference of two readings with nothing moved between, which only scatter moves.</param>
internal sealed record FaultEntry(ReadKinds Kind, int Condition, int Barrel, double Value, double Deviation, double Mean, bool IsRepeat = false);
