namespace Tickover.Workshop.StripDown.Jets;

/// <summary>What is found of a jet, in words.</summary>
internal static class JetWords
{
    /// <summary>The words.</summary>
    /// <param name="verdict">What was measured.</param>
    /// <param name="finding">What it says.</param>
    /// <returns>A sentence or two.</returns>
    public static string Of(JetVerdict verdict, JetFinding finding) => finding switch
    {
        JetFinding.Agrees => "What was measured agrees.",
        JetFinding.Wide => verdict.FlowBore is null ? "Wider than its stamp: drilled, reamed or worn. Time its flow before it is thrown away." : "Wider than its stamp: drilled, reamed or worn. Count it by what it flows, or replace it.",
        JetFinding.Blocked => "Less flows than its bore allows: varnish, dirt or a burr. Clean it without a wire, and time it again.",
        JetFinding.Narrow => "Narrower than its stamp: closed up and drilled anew, or stamped wrong. Count it by what it flows.",
        JetFinding.OtherNumbering => "Its number fits the other way of numbering: by flow instead of by bore, or the other way about. Do not mix it with the rest by number.",
        JetFinding.Rounded => "More flows than the gauge allows: an edge is rounded or chamfered, or the gauge met a burr. Count it by what it flows.",
        _ => verdict.FlowBore is null && verdict.Jet.PinMillimetres is null ? "Not measured: gauge it, or time it on the bench." : "Nothing to compare it with: gauge it as well as time it.",
    };
}
