using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Output;

/// <summary>A choice of jets as JSON.</summary>
internal static class JetsJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">The choice.</param>
    /// <returns>The text.</returns>
    public static string Text(JetsResult result) =>
        JsonSerializer.Serialize(
            new JetsDocument
            {
                Car = result.Car.Name,
                Readings = result.Fit?.Points.Count ?? 0,
                SetsTried = result.Advice.Tried,
                QuickReckoning = Round(result.Advice.QuickReckoning),
                SpeedsRpm = result.Advice.Now.Map.Grid.SpeedsRpm,
                ThrottleDegrees = result.Advice.Now.Map.Grid.ThrottleDegrees,
                Proposals = [.. result.Proposals().Select(p => Of(p.Name, p.Proposal))],
            },
            CommandJson.Readable.JetsDocument) + Environment.NewLine;

    private static ProposedJets Of(string name, JetProposal proposal) => new()
    {
        Name = name,
        Cost = Round(proposal.Cost),
        InTarget = Round(proposal.InTargetOverall),
        InTargetByRegime = proposal.InTarget.ToDictionary(t => t.Regime, t => Round(t.Probability), StringComparer.Ordinal),
        Changes = [.. proposal.Changes.Select(c => new ProposedChange(c.Part, c.Label, c.From, c.To, c.Pieces, c.ToOrder, c.Effects.ToDictionary(e => e.Regime, e => Round(e.Part), StringComparer.Ordinal)))],
        Lambda = [.. proposal.Map.LogLambda.Select(l => Round(Math.Exp(l)))],
        Deviation = [.. Enumerable.Range(0, proposal.Map.LogLambda.Count).Select(p => Round(proposal.Map.Deviation(p)))],
    };

    private static double Round(double value) => Math.Round(value, 4);
}
