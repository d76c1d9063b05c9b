using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>A file that was dropped, kept for a while so that it can be read again with its columns corrected.</summary>
/// <param name="Id">Number of the run it makes or made.</param>
/// <param name="Visit">The visit it was dropped on.</param>
/// <param name="Name">What it is called.</param>
/// <param name="On">The day it was taken.</param>
/// <param name="File">Where it lies.</param>
/// <param name="Told">How it was read last.</param>
public sealed record LogInHand(Id<RoadRun> Id, Id<Visit> Visit, string Name, DateOnly On, string File, LogTold Told);
