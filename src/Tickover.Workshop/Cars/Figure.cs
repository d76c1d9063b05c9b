namespace Tickover.Workshop.Cars;

/// <summary>One figure of a car with its value and where it comes from.</summary>
/// <param name="Definition">What it is.</param>
/// <param name="Si">Value in SI units (angles in radians, temperatures in K, speeds in rad/s, percent as a part of one).</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="AsTyped">The text in the document, or null where it is a default.</param>
public sealed record Figure(FigureDefinition Definition, double Si, Origin Origin, string? AsTyped);
