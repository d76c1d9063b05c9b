namespace Tickover.Instruments.Logs;

/// <summary>One column of a <see cref="LogLayout"/>, in words that outlive a change of the program.</summary>
/// <param name="Column">Heading.</param>
/// <param name="Quantity">Name of its <see cref="LogQuantity"/>.</param>
/// <param name="Unit">Name of its unit; empty for none.</param>
/// <param name="Bank">Bank from 1, or null.</param>
/// <param name="Place">Place in the row from 1, for files in which two columns are called alike; 0 where the heading alone tells.</param>
public sealed record RememberedColumn(string Column, string Quantity, string Unit, int? Bank, int Place = 0);
