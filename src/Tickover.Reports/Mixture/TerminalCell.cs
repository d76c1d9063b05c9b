namespace Tickover.Reports.Mixture;

/// <summary>One place on the terminal's map: half a character high.</summary>
/// <param name="Lambda">λ; NaN without an answer.</param>
/// <param name="Beyond">How far λ lies beyond the target: above zero too lean, below too rich.</param>
internal readonly record struct TerminalCell(double Lambda, double Beyond)
{
    internal bool HasAnswer => !double.IsNaN(Lambda);
}
