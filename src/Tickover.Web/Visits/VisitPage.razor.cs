using Microsoft.AspNetCore.Components;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Visits;

/// <summary>One visit: the route, what is next and why, and what was found.</summary>
public partial class VisitPage
{
    private const int MostShown = 3;
    private const int MinutesPerHour = 60;

    /// <summary>The visit.</summary>
    [Parameter, EditorRequired]
    public VisitRecord Record { get; set; } = null!;

    /// <summary>The one or two most useful next things.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<Advice> Advice { get; set; } = [];

    /// <summary>Today.</summary>
    [Parameter]
    public DateOnly Today { get; set; }

    private string Here => Addresses.Of(Record.Visit.Id);

    private string Where => $"Visit of {Days.Short(Record.Visit.ArrivedOn, Today)}.{(Record.Visit.Complaint.Length > 0 ? $" “{Record.Visit.Complaint}”" : "")}";

    private GateStatus? Gate => Advice is [{ Place: { Kind: AdvicePlaceKind.Gate, Gate: { } gate } }, ..] ? GateStatus.Of(Record, gate, Today) : null;

    private IReadOnlyList<Finding> Shown => [.. FindingOrder.WorstFirst(Record.Findings).Take(MostShown)];

    private string Count
    {
        get
        {
            var open = Record.Findings.Count(f => f.State == FindingState.Open);
            var all = Record.Findings.Count == 1 ? "1 finding" : $"{Record.Findings.Count} findings";
            return open == 0 ? all : $"{all}, {open} open";
        }
    }

    private static string Duration(int minutes) => minutes < MinutesPerHour ? $"{minutes} min" : $"{minutes / MinutesPerHour} h{(minutes % MinutesPerHour > 0 ? $" {minutes % MinutesPerHour}" : "")}";
}
