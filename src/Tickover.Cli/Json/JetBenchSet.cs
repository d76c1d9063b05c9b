namespace Tickover.Cli.Json;

/// <summary>Jets of one part and stamp in a <see cref="JetBenchDocument"/>.</summary>
/// <param name="Part">What they are.</param>
/// <param name="Stamp">What is stamped on them.</param>
/// <param name="Count">How many were on the bench.</param>
/// <param name="Spread">Widest from narrowest, as a part of the middle flow.</param>
/// <param name="Outside">Where those sat that are outside the limit, band counted.</param>
/// <param name="CannotTell">Where those sat whose band reaches over the limit.</param>
internal sealed record JetBenchSet(string Part, string Stamp, int Count, double Spread, IReadOnlyList<string> Outside, IReadOnlyList<string> CannotTell);
