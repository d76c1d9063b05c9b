namespace Tickover.Cli.Json;

/// <summary>One cell that was read, in a <see cref="WallReport"/>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Zone">Pad or Open.</param>
/// <param name="Reading">Depth, Shallower, Deeper or Hole.</param>
/// <param name="DepthMillimetres">Depth, or what it is shallower or deeper than.</param>
internal sealed record WallReportCell(string Name, string Zone, string Reading, double DepthMillimetres);
