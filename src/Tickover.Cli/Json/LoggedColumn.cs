namespace Tickover.Cli.Json;

/// <summary>One column of a log.</summary>
/// <param name="Column">Heading.</param>
/// <param name="Quantity">What it holds, in the words of <c>--set</c>.</param>
/// <param name="Unit">Its unit, or null.</param>
/// <param name="Bank">Bank from 1, or null.</param>
/// <param name="Sureness">How sure that is.</param>
/// <param name="Why">Why.</param>
/// <param name="Seen">A few cells.</param>
/// <param name="Least">Smallest figure, as the file has it.</param>
/// <param name="Most">Largest figure, likewise.</param>
internal sealed record LoggedColumn(string Column, string Quantity, string? Unit, int? Bank, string Sureness, string Why, string Seen, double? Least, double? Most);
