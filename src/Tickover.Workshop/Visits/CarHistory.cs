namespace Tickover.Workshop.Visits;

/// <summary>A car over the years: what it was, what was on it, and every visit.</summary>
/// <param name="Car">The car.</param>
/// <param name="Owner">Who owns it now.</param>
/// <param name="Descriptions">Its descriptions, oldest first.</param>
/// <param name="Components">Numbered parts that are or were on it.</param>
/// <param name="Visits">Its visits, oldest first.</param>
public sealed record CarHistory(
    CustomerCar Car, Owner? Owner, IReadOnlyList<CarDescription> Descriptions, IReadOnlyList<Component> Components, IReadOnlyList<VisitRecord> Visits);
