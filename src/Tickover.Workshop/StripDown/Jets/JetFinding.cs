namespace Tickover.Workshop.StripDown.Jets;

/// <summary>What stamp, bore and flow say of a jet together.</summary>
public enum JetFinding
{
    /// <summary>They agree within what they are good to.</summary>
    Agrees = 0,

    /// <summary>Wider than its stamp by gauge, flow or both: drilled, reamed or worn.</summary>
    Wide = 1,

    /// <summary>The gauge fits its stamp, but less flows: varnish, dirt or a burr.</summary>
    Blocked = 2,

    /// <summary>Narrower than its stamp by gauge and flow: another numbering, a wrong stamp, or soldered up and drilled anew.</summary>
    Narrow = 3,

    /// <summary>The stamp fits the other way of numbering: by flow instead of bore, or the other way about.</summary>
    OtherNumbering = 4,

    /// <summary>More flows than the gauge allows: an edge rounded or chamfered.</summary>
    Rounded = 5,

    /// <summary>There is nothing to compare it with.</summary>
    Unknown = 6,
}
