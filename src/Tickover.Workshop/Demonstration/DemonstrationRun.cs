using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Demonstration;

/// <summary>A sample log as it was read: what a road run of the demonstration is made of.</summary>
/// <param name="Name">Name of the log.</param>
/// <param name="Points">Its steady points.</param>
/// <param name="Told">How it was read, a sentence a line.</param>
public sealed record DemonstrationRun(string Name, IReadOnlyList<MixturePoint> Points, string Told);
