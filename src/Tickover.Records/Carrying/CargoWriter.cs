using Microsoft.EntityFrameworkCore;
using Tickover.Records.Keeping;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Writes what an export holds into an open transaction, after what is in the record already.</summary>
/// <param name="context">The record, in a transaction of the one writer.</param>
/// <param name="cargo">What the export holds.</param>
internal sealed class CargoWriter(RecordsContext context, Cargo cargo)
{
    private const int MostComplaints = 50;
    private readonly Dictionary<Guid, RecordItem> _here = [];
    private readonly Dictionary<long, long> _numbers = [];
    private readonly Dictionary<Id<Visit>, (int There, int Here)> _renumbered = [];
    private readonly List<string> _complaints = [];
    private HashSet<Guid> _keptActs = [];

    /// <summary>Why nothing may be committed.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Items taken in.</summary>
    public IReadOnlyList<RecordItem> Added { get; private set; } = [];

    /// <summary>Acts taken in.</summary>
    public int Acts { get; private set; }

    /// <summary>Visits that have another number here.</summary>
    public IReadOnlyList<(int There, int Here)> Renumbered => [.. _renumbered.Values];

    /// <summary>Compares with what is here and, where nothing contradicts, adds all that is new.</summary>
    public async Task WriteAsync(CancellationToken cancellation)
    {
        foreach (var kind in RecordKinds.All)
        {
            foreach (var item in await ItemTable.AllAsync(context, kind, cancellation))
            {
                _here[item.Key] = item;
            }
        }

        await NumberActsAsync(cancellation);
        Compare();
        if (_complaints.Count > 0)
        {
            return;
        }

        NumberVisits();
        Added = [.. cargo.All.Where(i => !_here.ContainsKey(i.Key)).Select(Here)];
        context.AddRange(Added);
        foreach (var item in Added)
        {
            await SearchIndex.NoteAsync(context, item, cancellation);
        }

        foreach (var act in cargo.Acts.Where(a => !_keptActs.Contains(a.Key)))
        {
            Add(act);
        }
    }

    private static void Limit(List<string> complaints)
    {
        if (complaints.Count > MostComplaints)
        {
            var more = complaints.Count - MostComplaints;
            complaints.RemoveRange(MostComplaints, more);
            complaints.Add($"And {more} more.");
        }
    }

    // An empty record takes the numbers over; one with acts of its own counts on from them.
    private async Task NumberActsAsync(CancellationToken cancellation)
    {
        var kept = await context.Acts.AsNoTracking().Select(a => new { a.Key, a.Number }).ToDictionaryAsync(a => a.Key, a => a.Number, cancellation);
        _keptActs = [.. kept.Keys];
        var last = kept.Count == 0 ? 0 : kept.Values.Max();
        foreach (var act in cargo.Acts)
        {
            _numbers[act.Number] = kept.TryGetValue(act.Key, out var number) ? number : kept.Count == 0 ? act.Number : ++last;
        }
    }

    private void Compare()
    {
        var slugs = _here.Values.OfType<CustomerCar>().ToDictionary(c => c.Slug, StringComparer.Ordinal);
        foreach (var there in cargo.All)
        {
            if (!_here.TryGetValue(there.Key, out var here))
            {
                if (there is CustomerCar car && slugs.TryGetValue(car.Slug, out var other))
                {
                    _complaints.Add($"The car {car.Name} goes by the name \"{car.Slug}\", and so does {other.Name} here. Give one of them another name.");
                }
            }
            else if (here.GetType() != there.GetType())
            {
                _complaints.Add($"{ItemLikeness.Words(there)} has the number of something else here.");
            }
            else if (ItemLikeness.Differences(here, there) is { Count: > 0 } fields)
            {
                _complaints.Add($"{ItemLikeness.Words(here)} is here already and reads otherwise: {string.Join(", ", fields)}.");
            }
        }

        Limit(_complaints);
    }

    private void NumberVisits()
    {
        var taken = _here.Values.OfType<Visit>().Select(v => v.Number).ToHashSet();
        var next = taken.Concat(cargo.Of<Visit>().Select(v => v.Number)).DefaultIfEmpty(0).Max();
        foreach (var visit in cargo.Of<Visit>().Where(v => !_here.ContainsKey(v.Key) && !taken.Add(v.Number)))
        {
            _renumbered[visit.Id] = (visit.Number, ++next);
        }
    }

    // The item with the numbers of this record.
    private RecordItem Here(RecordItem item)
    {
        var stamped = item with { Kept = _numbers.GetValueOrDefault(item.Kept, item.Kept), Changed = _numbers.GetValueOrDefault(item.Changed, item.Changed) };
        return stamped is Visit visit && _renumbered.TryGetValue(visit.Id, out var number) ? visit with { Number = number.Here } : stamped;
    }

    private void Add(CarriedAct act)
    {
        // What was done here to things that were here already stands in this record's own journal.
        var changes = act.Changes.Where(c => !_here.ContainsKey(c.Item)).ToList();
        if (changes.Count == 0 && act.Changes.Count > 0)
        {
            return;
        }

        Acts++;
        context.Acts.Add(new ActRow
        {
            Number = _numbers[act.Number],
            Key = act.Key,
            Kind = Enum.Parse<ActKind>(act.Kind),
            Words = act.Words,
            At = act.At.ToUniversalTime(),
            Person = act.Person is { } person ? new Id<Person>(person) : null,
            Device = act.Device,
            Visit = act.Visit is { } visit ? new Id<Visit>(visit) : null,
            Undoes = act.Undoes is { } undoes && _numbers.TryGetValue(undoes, out var older) ? older : null,
            UndoneBy = act.UndoneBy is { } undoneBy && _numbers.TryGetValue(undoneBy, out var newer) ? newer : null,
        });
        context.Changes.AddRange(changes.Select(c => new ChangeRow
        {
            Act = _numbers[act.Number],
            Ordinal = c.Ordinal,
            Kind = c.Kind,
            Item = c.Item,
            Version = c.Version,
            Before = c.Before is { } before ? Here(c.Kind, before.GetRawText()) : null,
            After = Here(c.Kind, c.After.GetRawText()),
        }));
    }

    private string Here(string kind, string json) => RecordKinds.Write(Here(RecordKinds.Read(kind, json)));
}
