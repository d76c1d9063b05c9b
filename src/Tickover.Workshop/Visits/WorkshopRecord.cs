namespace Tickover.Workshop.Visits;

/// <summary>The workshop with its people and instruments.</summary>
/// <param name="House">Name, address, country, units, words.</param>
/// <param name="People">Those who sign here, those who left among them (taken off).</param>
/// <param name="Instruments">The instruments, those given up among them (taken off).</param>
public sealed record WorkshopRecord(House House, IReadOnlyList<Person> People, IReadOnlyList<Instrument> Instruments)
{
    /// <summary>The initials of a person.</summary>
    /// <param name="person">Who; null where that is not known.</param>
    /// <returns>Initials, or an empty text.</returns>
    public string InitialsOf(Id<Person>? person) => People.FirstOrDefault(p => p.Id == person)?.Initials ?? "";

    /// <summary>An instrument.</summary>
    /// <param name="instrument">Which.</param>
    /// <returns>The instrument, or null.</returns>
    public Instrument? Find(Id<Instrument>? instrument) => Instruments.FirstOrDefault(i => i.Id == instrument);
}
