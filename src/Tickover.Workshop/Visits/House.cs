namespace Tickover.Workshop.Visits;

/// <summary>The workshop itself: one item that every account carries at its head.</summary>
public sealed record House : RecordItem<House>
{
    /// <summary>The one identifier, since there is one workshop in a record.</summary>
    public static readonly Id<House> TheOne = new(new Guid("01900000-0000-7000-8000-000000000001"));

    /// <summary>Name on the accounts.</summary>
    public string Name { get; init; } = "";

    /// <summary>Address, lines parted by line ends.</summary>
    public string Address { get; init; } = "";

    /// <summary>How an owner reaches the workshop.</summary>
    public string Telephone { get; init; } = "";

    /// <summary>Country whose authorities are named: GB, IE, EU, US, CA or AU.</summary>
    public string Country { get; init; } = "GB";

    /// <summary>The workshop's own words for whom to defer to, by topic of hazard; they stand in place of the built-in ones.</summary>
    public IReadOnlyDictionary<string, string> OwnAuthorities { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Whether figures are shown in metric or imperial units.</summary>
    public UnitChoice Units { get; init; }

    /// <summary>British or American words.</summary>
    public TradeWords Words { get; init; }

    /// <summary>A4 or Letter.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>ISO 4217 code of the money in estimates and prices.</summary>
    public string Currency { get; init; } = "GBP";

    /// <summary>Terms of guarantee as they stand on the account.</summary>
    public string Guarantee { get; init; } = "";

    /// <summary>What is kept of owners and photographs, and for how long, as it stands on the account.</summary>
    public string Privacy { get; init; } = "";

    /// <summary>Whether this is the invented workshop of the demonstration.</summary>
    public bool Demonstration { get; init; }
}
