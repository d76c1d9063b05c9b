using System.Globalization;
using System.Text;
using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Output;

/// <summary>A choice of jets as text.</summary>
/// <param name="width">Columns to fill at most.</param>
internal sealed class JetsText(int width)
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>Writes it.</summary>
    /// <param name="result">The choice.</param>
    /// <returns>The text.</returns>
    public string Text(JetsResult result)
    {
        var text = new StringBuilder();
        WrappedText.Append(text, width, string.Empty, string.Create(C, $"{result.Car.Name}: {result.Advice.Tried:N0} sets tried, judged over the map by how a road car is driven."));
        WrappedText.Append(text, width, string.Empty, Basis(result));
        text.AppendLine();
        text.Append(TextTable.Text(
            width,
            ["Set", "Idle\t", "Progression\t", "Cruise\t", "Full load\t", "All\t"],
            result.Proposals().Select(p => (IReadOnlyList<string>)[p.Name, .. p.Proposal.InTarget.Select(t => PerCent(t.Probability)), PerCent(p.Proposal.InTargetOverall)])
                .Append(["part of the driving", .. result.Advice.Driving.Select(d => PerCent(d.Part)), string.Empty])));
        WrappedText.Append(text, width, string.Empty, "Chance of being in target, by regime, weighed by how the car is driven. Chosen by what being off target costs: lean dearer than rich, dearest at full load.");
        foreach (var (name, proposal) in result.Proposals().Skip(1))
        {
            text.AppendLine();
            text.AppendLine(C, $"{char.ToUpperInvariant(name[0])}{name[1..]}");
            Changes(text, proposal, result.HasShelf);
        }

        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, "Change one circuit at a time in this order and drive between. Jets and levels are changed with the engine cold, the fuel shut off and the bay ready; petrol vapour burns: follow the local rules.");
        return text.ToString();
    }

    private void Changes(StringBuilder text, JetProposal proposal, bool hasShelf)
    {
        if (proposal.Changes.Count == 0)
        {
            text.AppendLine("  Leave it as it is: nothing tried is worth the work.");
            return;
        }

        text.Append(TextTable.Text(
            width,
            ["", "Part", "From\t", "To\t", "Pieces\t", "What it does to λ"],
            proposal.Changes.Select((c, i) => (IReadOnlyList<string>)[(i + 1).ToString(C) + ".", c.Label, c.From, c.To, Pieces(c, hasShelf), Effects(c)])));
    }

    private static string Basis(JetsResult result) => result.Fit is { } fit
        ? string.Create(C, $"Fitted to {fit.Points.Count} readings of {fit.Runs.Count} run(s); readings foretold from the others were off by {100 * fit.LeftOutError:0.0} %.")
        : "Computed from the description alone, not fitted to readings of this car: take the sizes as a direction. A log (tickover fit) makes the bands narrow.";

    private static string Pieces(JetChange change, bool hasShelf) => change.Pieces == 0
        ? "set"
        : !hasShelf || change.ToOrder == 0 ? change.Pieces.ToString(C) : string.Create(C, $"{change.Pieces}, order {change.ToOrder}");

    private static string Effects(JetChange change) => change.Effects.Count == 0
        ? "hardly anything by itself"
        : string.Join(", ", change.Effects.Select(e => string.Create(C, $"{e.Regime} {100 * e.Part:+0.0;-0.0} %")));

    private static string PerCent(double part) => string.Create(C, $"{100 * part:0} %");
}
