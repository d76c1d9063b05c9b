using System.Globalization;
using Tickover.Web.Visits;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Balance;

/// <summary>Something done between rounds, as the page sends it: a step of the balancing and its words.</summary>
/// <param name="Step">The step.</param>
/// <param name="Words">As it is said.</param>
internal sealed record ActEntry(BalanceStep Step, string Words)
{
    private const decimal LargestGap = 20;

    /// <summary>Reads the form; complaints go into it.</summary>
    /// <returns>The act; null where it could not be read.</returns>
    public static ActEntry? Of(FormFields fields, EnginePlan plan)
    {
        var (kind, adjuster, turns) = Pressed(fields);
        return kind switch
        {
            ScrewTurnKind.RodsOff => new(new RodsTakenOff(), "Rods off"),
            ScrewTurnKind.RodsOn => new(new RodsPutBack(), "Rods back on"),
            ScrewTurnKind.LookedAt => Looked(fields, plan, adjuster),
            ScrewTurnKind.CheckedFor => Checked(fields, plan, adjuster),
            _ => Turn(fields, plan, adjuster, turns),
        };
    }

    /// <summary>The act as the record keeps it.</summary>
    public ScrewTurn ToRecord(VisitRecord record, FormFields fields, DateTimeOffset now) => new()
    {
        Id = new Id<ScrewTurn>(fields.Key),
        Visit = record.Visit.Id,
        Kind = Step switch { RodsTakenOff => ScrewTurnKind.RodsOff, RodsPutBack => ScrewTurnKind.RodsOn, LookedAt => ScrewTurnKind.LookedAt, CheckedFor => ScrewTurnKind.CheckedFor, _ => ScrewTurnKind.Turned },
        Adjuster = Step switch { Turned t => t.Adjuster, LookedAt l => l.What, CheckedFor c => c.Fault.ToString(), _ => "" },
        Turns = Step is Turned turned ? turned.Turns : 0,
        GapMillimetres = Step is LookedAt looked ? looked.Gap : null,
        Found = Step is CheckedFor { Found: true },
        Advised = fields.Ticked("advised"),
        Words = Words,
        Note = fields.Text("note"),
        TakenAt = RoundEntry.TakenAt(fields, now),
    };

    // A button of the list of adjusters ends in "[bypass:4 0.125]"; its words before that are for people.
    private static (ScrewTurnKind Kind, string Adjuster, double Turns) Pressed(FormFields fields)
    {
        var pressed = fields.Text("turn");
        if (pressed.LastIndexOf('[') is var at && at >= 0 && pressed[(at + 1)..].TrimEnd(']').Split(' ') is [var key, var text] && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var turns))
        {
            return (ScrewTurnKind.Turned, key, turns);
        }

        return (fields.Choice("kind", ScrewTurnKind.Turned), fields.Text("adjuster"), (double)(fields.Number("turns", "Turns") ?? 0));
    }

    private static ActEntry? Turn(FormFields fields, EnginePlan plan, string key, double turns)
    {
        if (plan.Find(key) is not { } adjuster)
        {
            fields.Complain("adjuster", $"\"{key}\" is nothing that can be turned on this engine. Choose it from the list.");
            return null;
        }

        var steps = Math.Round(turns * adjuster.StepsATurn);
        if (steps == 0 || Math.Abs(turns) > adjuster.TravelTurns)
        {
            fields.Complain("turns", string.Create(CultureInfo.InvariantCulture, $"{adjuster.Where}, {adjuster.Thing}: it turns by steps of 1/{adjuster.StepsATurn}, at most {adjuster.TravelTurns:0} turns."));
            return null;
        }

        var step = new Turned(adjuster.Key, steps / adjuster.StepsATurn);
        return new(step, MoveWords.Of(step, plan));
    }

    private static ActEntry? Looked(FormFields fields, EnginePlan plan, string key)
    {
        var adjuster = plan.Find(key);
        if (adjuster is null)
        {
            fields.Complain("adjuster", $"\"{key}\" is nothing on this engine. Choose it from the list.");
        }

        var gap = fields.Number("gap", "Gap");
        if (gap is null || Math.Abs(gap.Value) > LargestGap)
        {
            fields.Complain("gap", "Gap: key in millimetres, 0 where it touches or drops on.");
        }

        return adjuster is null || gap is null || fields.Problems.Count > 0
            ? null
            : new(new LookedAt(adjuster.Key, (double)gap), string.Create(CultureInfo.InvariantCulture, $"{adjuster.Where}, {adjuster.Thing}: {gap:0.0#} mm"));
    }

    private static ActEntry? Checked(FormFields fields, EnginePlan plan, string text)
    {
        if (FaultPlace.Read(text, plan) is not { } fault)
        {
            fields.Complain("adjuster", "That fault is not on the list. Load the page again.");
            return null;
        }

        var found = fields.Ticked("found");
        return new(new CheckedFor(fault, found), $"{PlanWords.Fault(fault, plan)}: {(found ? "found and put right" : "looked at, in order")}");
    }
}
