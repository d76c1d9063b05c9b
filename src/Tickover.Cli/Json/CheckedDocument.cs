using Tickover.Workshop.Cars;

namespace Tickover.Cli.Json;

/// <summary>One document.</summary>
/// <param name="File">Its name as typed.</param>
/// <param name="Good">Whether it has no faults.</param>
/// <param name="Complaint">Why it could not be read at all; null where it could.</param>
/// <param name="Faults">All faults.</param>
/// <param name="Warnings">What was accepted but is unusual.</param>
/// <param name="Car">What it describes; null where it has faults.</param>
internal sealed record CheckedDocument(
    string File, bool Good, string? Complaint, IReadOnlyList<Fault> Faults, IReadOnlyList<Fault> Warnings, CheckedCar? Car);
