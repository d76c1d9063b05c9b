using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Output;

/// <summary>A choice of jets and what it rests on.</summary>
/// <param name="Car">The car as it is.</param>
/// <param name="Advice">The choice.</param>
/// <param name="Fit">The fit it rests on; null where the priors had to do.</param>
/// <param name="HasShelf">Whether there was a shelf.</param>
internal sealed record JetsResult(Car Car, JetAdvice Advice, CarFit? Fit, bool HasShelf)
{
    /// <summary>The proposals with their names, what is fitted first.</summary>
    public IEnumerable<(string Name, JetProposal Proposal)> Proposals()
    {
        yield return ("fitted now", Advice.Now);
        if (Advice.FromShelf is { } shelf)
        {
            yield return ("best from the shelf", shelf);
        }

        yield return ("best if ordered", Advice.IfOrdered);
        yield return ("least effort", Advice.LeastEffort);
    }
}
