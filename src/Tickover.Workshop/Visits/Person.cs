namespace Tickover.Workshop.Visits;

/// <summary>Someone who works here and signs with initials and PIN. The PIN itself is no part of the record.</summary>
public sealed record Person : RecordItem<Person>
{
    /// <summary>Full name.</summary>
    public string Name { get; init; } = "";

    /// <summary>Two to four letters, shown beside each signature.</summary>
    public string Initials { get; init; } = "";

    /// <summary>What the person does here.</summary>
    public string Role { get; init; } = "";
}
