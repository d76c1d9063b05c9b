using Tickover.Workshop.Cars;

namespace Tickover.Web.Worksheets;

/// <summary>A document taken into the hand, or refused.</summary>
/// <typeparam name="T">What a document says, worked out.</typeparam>
/// <param name="Id">Its name in the address.</param>
/// <param name="Said">What it says; null where it cannot be used.</param>
/// <param name="Faults">Why it cannot be used; empty where it can.</param>
public sealed record Taken<T>(string Id, T? Said, IReadOnlyList<Fault> Faults)
    where T : class;
