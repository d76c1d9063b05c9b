namespace Tickover.Workshop.Visits.Measures;

/// <summary>The car as it was on a day: its description and the numbered parts on it.</summary>
/// <param name="Day">The day.</param>
/// <param name="Description">The description that held; null before the first.</param>
/// <param name="Components">The parts on the car at the end of the day.</param>
public sealed record CarAtDate(DateOnly Day, CarDescription? Description, IReadOnlyList<Component> Components)
{
    /// <summary>The car on a day.</summary>
    /// <param name="history">The car over the years.</param>
    /// <param name="day">The day.</param>
    /// <returns>The car as it was.</returns>
    public static CarAtDate Of(CarHistory history, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(history);
        return new CarAtDate(day, DescriptionOn(history.Descriptions, day), [.. history.Components.Where(c => IsOn(c, day))]);
    }

    /// <summary>The description that held on a day: the last to begin, and of two that begin on one day the one kept later.</summary>
    internal static CarDescription? DescriptionOn(IEnumerable<CarDescription> descriptions, DateOnly day) =>
        descriptions.Where(d => !d.Removed && d.Since <= day).OrderBy(d => d.Since).ThenBy(d => d.Kept).LastOrDefault();

    /// <summary>Whether a part was on the car at the end of a day; the day it came off it no longer was.</summary>
    internal static bool IsOn(Component component, DateOnly day) =>
        !component.Removed && (component.FittedOn is not { } fitted || fitted <= day) && (component.TakenOffOn is not { } taken || taken > day);
}
