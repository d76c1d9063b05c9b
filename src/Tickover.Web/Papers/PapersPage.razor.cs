using Microsoft.AspNetCore.Components;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Papers;

/// <summary>What goes with a visit on paper: parts, time, questions to the owner, and the numbered parts of the car.</summary>
public partial class PapersPage
{
    /// <summary>The visit.</summary>
    [Parameter, EditorRequired]
    public VisitRecord Record { get; set; } = null!;

    /// <summary>Today.</summary>
    [Parameter]
    public DateOnly Today { get; set; }

    /// <summary>Who is at work here.</summary>
    [Parameter]
    public Id<Person>? Person { get; set; }

    /// <summary>The form as it was sent, where it was not kept.</summary>
    [Parameter]
    public TypedForm Typed { get; set; } = TypedForm.Blank;

    private string Here => Addresses.Of(Record.Visit.Id);

    private string Currency => Record.Workshop.House.Currency;

    private string Open => Record.Approvals.Count(a => a.Answer == ApprovalAnswer.Open) is var open and > 0 ? $"{open} without an answer" : "";

    private PartLine BlankPart { get; } = new();

    private Approval BlankApproval => new() { AskedOn = Today };

    private TimeLine BlankTime => new() { On = Today, Person = Person };

    private Component BlankComponent => new() { FittedOn = Today };

    private static string Part(PartLine part) => part.Quantity is "1" or "" ? part.What : $"{part.Quantity} × {part.What}";

    private static string Component(Component component) => Joined(" ", component.What.Length > 0 ? component.What : component.Kind.ToString(), component.Place, component.SerialNumber.Length > 0 ? $"no. {component.SerialNumber}" : "");

    private static string Joined(string between, params IEnumerable<string> parts) => string.Join(between, parts.Where(p => p.Length > 0));

    private string PartAbout(PartLine part) => Joined(
        ". ",
        PaperWords.Of(part.State) + On(part.State == PartState.Fitted ? part.FittedOn : part.OrderedOn),
        part.State == PartState.Ordered && part.PromisedFor is { } due ? $"Promised for {Days.Short(due, Today)}{(due < Today ? ", overdue" : "")}" : "",
        part.Reference,
        part.Price is { } price ? PaperWords.Money(price, Currency) : "",
        part.OldPart.Length > 0 ? $"Old part: {part.OldPart}" : "");

    private string ApprovalAbout(Approval approval) => Joined(
        ". ",
        $"Asked {Days.Short(approval.AskedOn, Today)}",
        approval.Price is { } price ? PaperWords.Money(price, Currency) : "",
        PaperWords.Of(approval.Answer) + On(approval.AnsweredOn),
        approval.AnswerWords.Length > 0 ? $"“{approval.AnswerWords}”" : "");

    private string TimeAbout(TimeLine time) => Joined(", ", Days.Short(time.On, Today), time.Stage.Words(), Record.Workshop.InitialsOf(time.Person));

    private string ComponentAbout(Component component) => Joined(
        ". ",
        component.FittedOn is { } on ? $"Fitted {Days.Short(on, Today)}" : "There already",
        component.TakenOffOn is { } off ? $"Taken off {Days.Short(off, Today)}" : "",
        component.Note);

    private string On(DateOnly? day) => day is { } known ? $" {Days.Short(known, Today)}" : "";
}
