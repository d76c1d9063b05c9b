using System.Globalization;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>Collects the acts of the demonstration.</summary>
internal sealed class Script(DateOnly today)
{
    private readonly List<Act> _acts = [];

    public IReadOnlyList<Act> Acts => _acts;

    public DateOnly Today => today;

    public DateOnly Ago(int days) => today.AddDays(-days);

    public void Do(string words, Id<Visit>? visit, Id<Person>? person, IReadOnlyList<RecordItem> items) => _acts.Add(new Act
    {
        Key = Named.Number(string.Create(CultureInfo.InvariantCulture, $"act/{today.DayNumber}/{_acts.Count}")),
        Items = items,
        Words = words,
        Visit = visit,
        Person = person,
        Device = DemonstrationWorkshop.Device,
    });
}
