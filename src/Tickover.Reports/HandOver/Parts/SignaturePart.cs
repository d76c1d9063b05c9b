using Tickover.Reports.Paper;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>14: signatures, and the way back to the record.</summary>
internal static class SignaturePart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var signed = t.Record.Signatures.Select(s => new SignatureLine(s.For.Length > 0 ? s.For : t.Say("For the workshop"), $"{t.Name(s.Person)}, {t.Day(s.On)}")).ToList();
        List<SignatureLine> lines = [.. signed.Count > 0 ? signed : [new SignatureLine(t.Say("For the workshop: not signed yet"), "")], new SignatureLine(t.Say("Owner: account received and explained"), "")];
        List<Block> blocks = [new Heading(2, t.Say("Signatures")), new Signatures(lines)];
        if (t.Settings.Address.Length > 0)
        {
            blocks.Add(new QrLink(t.Settings.Address, t.Say("The record of this visit, with every reading and photograph, is in the workshop at:")));
        }

        return [new Together(blocks)];
    }
}
