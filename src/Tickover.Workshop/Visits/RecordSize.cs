namespace Tickover.Workshop.Visits;

/// <summary>Which record is open and how much is in it.</summary>
/// <param name="Where">The file or the database, without any password.</param>
/// <param name="Cars">Cars known.</param>
/// <param name="Visits">Visits, open and closed.</param>
/// <param name="OpenVisits">Visits still open.</param>
/// <param name="Readings">Readings kept.</param>
/// <param name="Photographs">Photographs kept.</param>
/// <param name="LastAct">When something was last kept; null in an empty record.</param>
public sealed record RecordSize(string Where, int Cars, int Visits, int OpenVisits, int Readings, int Photographs, DateTimeOffset? LastAct);
