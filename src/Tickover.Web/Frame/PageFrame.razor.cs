using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.Extensions;
using Tickover.Web.Lan;

namespace Tickover.Web.Frame;

/// <summary>The page around every page: the strip above, the work, the foot.</summary>
public partial class PageFrame
{
    /// <summary>Title of the window.</summary>
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    /// <summary>The heading in the strip: the car, or the name of the house's page.</summary>
    [Parameter, EditorRequired]
    public string Heading { get; set; } = "";

    /// <summary>Where we are and under which conditions.</summary>
    [Parameter]
    public string? Where { get; set; }

    /// <summary>Address of the page above this one.</summary>
    [Parameter]
    public string? BackTo { get; set; }

    /// <summary>What the page above is called.</summary>
    [Parameter]
    public string BackWord { get; set; } = "Cars";

    /// <summary>Address that steps back one save; null where there is nothing of the kind.</summary>
    [Parameter]
    public string? UndoAt { get; set; }

    /// <summary>Whether there is an earlier version.</summary>
    [Parameter]
    public bool CanUndo { get; set; }

    /// <summary>One sentence about what was just done.</summary>
    [Parameter]
    public string? Notice { get; set; }

    /// <summary>Buttons of this page in the strip.</summary>
    [Parameter]
    public RenderFragment? Tools { get; set; }

    /// <summary>The work.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [CascadingParameter]
    private HttpContext? Context { get; set; }

    // Whoever is not let in is offered nothing that would be refused.
    private bool IsLetIn => Context is null || Device is not null;

    private bool IsThisMachine => Device == RequestDevice.ThisMachine;

    private RequestDevice? Device => Context?.Features.Get<RequestDevice>();

    private string? Said => Notice ?? Visits.Notice.Take(Context);

    private string Look => Theme.Of(Context);

    private string Here => Context is { Request.Method: "GET" } ? Context.Request.GetEncodedPathAndQuery() : "/";
}
