namespace Tickover.Cli.Json;

/// <summary>One thing to set, in a <see cref="LinkageReport"/>.</summary>
/// <param name="What">Rod, Coupling or Clamp.</param>
/// <param name="Name">Its name.</param>
/// <param name="From">Where it stands: mm for a rod, else degrees.</param>
/// <param name="To">Where it should stand.</param>
/// <param name="Turns">Turns of the thread, positive longer or further open; 0 for a clamp.</param>
/// <param name="Words">The move in words.</param>
internal sealed record LinkageReportMove(string What, string Name, double From, double To, double Turns, string Words);
