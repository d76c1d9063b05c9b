namespace Tickover.Cli.Input;

/// <summary>A row that is no reading.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Reason">Why, with the way out.</param>
/// <param name="IsReading">Whether it was meant for one; names and units are not.</param>
internal sealed record RefusedRow(int Line, string Reason, bool IsReading);
