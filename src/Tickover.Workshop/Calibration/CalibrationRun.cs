using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Calibration;

/// <summary>Readings of one run, and the car as it was then: its jets are part of what was measured.</summary>
/// <param name="Name">What the run is called, such as the name of the log.</param>
/// <param name="Car">The car with the jets fitted at the time.</param>
/// <param name="Points">Its points.</param>
public sealed record CalibrationRun(string Name, Car Car, IReadOnlyList<MixturePoint> Points);
