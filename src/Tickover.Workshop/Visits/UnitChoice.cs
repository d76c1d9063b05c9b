namespace Tickover.Workshop.Visits;

/// <summary>The units in which figures are shown; what was typed is kept as typed.</summary>
public enum UnitChoice
{
    /// <summary>Millimetres, bar, degrees Celsius, litres, kilometres.</summary>
    Metric,

    /// <summary>Inches, pounds per square inch, degrees Fahrenheit, gallons, miles.</summary>
    Imperial,
}
