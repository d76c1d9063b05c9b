using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>Keeps beside each item the words it can be found by.</summary>
internal static class SearchIndex
{
    /// <summary>Notes the words of an item, or takes them away where it was taken off.</summary>
    public static async Task NoteAsync(RecordsContext context, RecordItem item, CancellationToken cancellation)
    {
        var words = string.Join(" · ", Words(item).Where(w => w.Length > 0));
        var kind = RecordKinds.NameOf(item);
        var row = await context.Search.FindAsync([kind, item.Key], cancellation);
        if (words.Length == 0 || item.Removed)
        {
            if (row is not null)
            {
                context.Search.Remove(row);
            }

            return;
        }

        if (row is null)
        {
            row = new SearchRow { Kind = kind, Key = item.Key };
            context.Search.Add(row);
        }

        row.Text = words;
        row.Folded = words.ToLowerInvariant();
        row.Changed = item.Changed;
        (row.Car, row.Visit) = await PlaceAsync(context, item, cancellation);
    }

    private static async Task<(Id<CustomerCar>? Car, Id<Visit>? Visit)> PlaceAsync(RecordsContext context, RecordItem item, CancellationToken cancellation) => item switch
    {
        CustomerCar car => (car.Id, null),
        Component component => (component.Car, null),
        Visit visit => (visit.Car, visit.Id),
        IOfVisit part => ((await context.Set<Visit>().FindAsync([part.Visit], cancellation))?.Car, part.Visit),
        _ => (null, null),
    };

    private static IEnumerable<string> Words(RecordItem item) => item switch
    {
        Owner o => [o.Name, o.Telephone, o.Email, o.Address, o.Note],
        CustomerCar c => [c.Name, c.Registration, c.ChassisNumber, c.Note],
        Component c => [c.What, c.SerialNumber, c.Place, c.Note],
        Visit v => [v.Complaint, v.Summary, v.Story, v.Wishes, v.Scope, v.WaitingFor],
        Finding f => [f.What, f.Where, f.Detail, f.Decision],
        WorkNote n => [n.What, n.Why, n.Further],
        PartLine p => [p.What, p.Reference, p.OldPart],
        Photograph p => [p.Caption, .. p.Marks.Select(m => m.Note)],
        Approval a => [a.Asked, a.AnswerWords],
        RoadRun r => [r.Name],
        Worksheet s => [s.Name, s.Reason],
        ScrewTurn t => [t.Words, t.Note],
        JetFitting f => [f.Choice, .. f.Parts.Select(p => $"{p.Label} {p.To}")],
        _ => [],
    };
}
