using Tickover.Reports.Paper;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>9: the signs at which to stop and call. Common practice of the trade; the same for every car.</summary>
internal static class StopPart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var call = t.House.Telephone.Trim().Length > 0
            ? Prose.Bold(t.Say("Call us: ")).ThenBold(t.House.Telephone)
            : t.Prose("The workshop\u2019s telephone number was not noted: ask for it and write it here.");
        yield return new Callout(t.Say("Stop and call us if"),
        [
            new Items(
            [
                t.Prose("you smell petrol, in the car or in the garage;"),
                t.Prose("you see a drip, a wet joint or a stain that is new;"),
                t.Prose("the throttle does not snap shut by itself, or sticks anywhere;"),
                t.Prose("a carburettor floods, spits back or pops;"),
                t.Prose("the needle of the fuel gauge stops moving."),
            ]),
            t.Tell("Switch off, leave the bonnet shut, stand away, and do not start again. If there is fire, leave it and call the fire brigade."),
            new Paragraph(call),
        ]);
    }
}
