namespace Tickover.Workshop.Walls.Reading;

/// <summary>What a number in the grid means.</summary>
/// <param name="Thickness">Sound sheet, mm.</param>
/// <param name="IsWallLeft">Whether it is wall left, and not the depth of a pit.</param>
internal sealed record SheetReading(double Thickness, bool IsWallLeft)
{
    /// <summary>Depth for a number of the document, mm.</summary>
    public double Depth(double value) => IsWallLeft ? Thickness - value : value;

    /// <summary>What is wrong with a number; null where nothing is.</summary>
    public (string Problem, string Allowed, string WhatToDo)? Complaint(double value, string said) => this switch
    {
        _ when value < 0 => ($"{said} is below zero", "zero and more, mm", "Write the reading without its sign."),
        { IsWallLeft: true } when value > WallForm.ThickestPart * Thickness => (
            $"{said} mm of wall where the sheet is {Text(Thickness)} mm", $"at most {Text(WallForm.ThickestPart * Thickness)} mm", "Check the reading, or the thickness above."),
        { IsWallLeft: true } when value == 0 => ("0 mm of wall is a hole", "more than zero, or \"hole\"", "Write \"hole\"."),
        { IsWallLeft: false } when value >= Thickness => (
            $"A pit of {said} mm in a sheet of {Text(Thickness)} mm", $"below {Text(Thickness)} mm, or \"hole\"", "Write \"hole\" where it is through, or check the thickness."),
        _ => null,
    };

    private static string Text(double value) => value.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
