namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Where limits come from, in the words shown beside them.</summary>
internal static class Origins
{
    /// <summary>What good practitioners do; no single published authority known.</summary>
    public const string Practice = "common practice";

    /// <summary>Worked out from textbook physics.</summary>
    public const string Derived = "worked out from textbook physics";

    /// <summary>An article, manual extract or thread of the trade.</summary>
    public const string TradeText = "published trade text";

    /// <summary>A public authority or standard.</summary>
    public const string Authority = "public authority";

    /// <summary>A document known of but not looked up.</summary>
    public const string FromMemory = "from memory, to be looked up";
}
