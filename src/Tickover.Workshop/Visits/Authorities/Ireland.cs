namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Ireland.</summary>
internal static class Ireland
{
    public static IReadOnlyList<Authority> Lines { get; } =
    [
        new(HazardTopic.PetrolVapour, "Safety, Health and Welfare at Work (General Application) Regulations 2007, Part 8, explosive atmospheres", "Health and Safety Authority",
            "hsa.ie, list of Irish legislation on explosive atmospheres", AuthorityMark.Verified),
        new(HazardTopic.HotWork, "Part 8 of the General Application Regulations 2007; HSA alert on hot work on tanks and drums: a gas-free certificate and a specialist, never here", "Health and Safety Authority",
            "hsa.ie list seen; the alert by the trade report", AuthorityMark.Verified),
        new(HazardTopic.Storage, "Dangerous Substances (Retail and Private Petroleum Stores) Regulations 1979, S.I. 311/1979, with its regulation on taking petrol from fuel tanks", "local authority; Health and Safety Authority",
            "irishstatutebook.ie, S.I. 311/1979", AuthorityMark.Verified),
        new(HazardTopic.Waste, "Waste Management Act 1996 and hazardous waste regulations", "Environmental Protection Agency; National Waste Collection Permit Office",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.CarbonMonoxide, "Safety, Health and Welfare at Work (Chemical Agents) Regulations 2001, S.I. 619/2001 as amended, and its code of practice", "Health and Safety Authority",
            "irishstatutebook.ie, S.I. 231/2021", AuthorityMark.Verified),
        new(HazardTopic.Asbestos, "Safety, Health and Welfare at Work (Exposure to Asbestos) Regulations 2006 and 2010, S.I. 386/2006 and 589/2010", "Health and Safety Authority",
            "irishstatutebook.ie and hsa.ie", AuthorityMark.Verified),
        new(HazardTopic.Lead, "Chemical Agents Regulations 2001 as amended, which cover lead", "Health and Safety Authority",
            "irishstatutebook.ie, S.I. 231/2021; that lead falls under them from memory", AuthorityMark.FromMemory),
        new(HazardTopic.Mercury, "Chemical Agents Regulations 2001 as amended; EU Regulation 2017/852 on mercury", "Health and Safety Authority; Environmental Protection Agency",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.VehicleSupport, "General Application Regulations 2007, parts on work equipment and lifting", "Health and Safety Authority",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Pressure, "General Application Regulations, part on pressure systems", "Health and Safety Authority",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Batteries, "HSA guidance on charging batteries", "Health and Safety Authority",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.RoadEmissions, "National Car Test manual and its rule for vehicles of age", "Road Safety Authority",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.HoseStandards, "I.S. EN 228 and I.S. EN 16942 for fuel and its labels; SAE J30 for hose", "National Standards Authority of Ireland; SAE International",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Contract, "Consumer Rights Act 2022", "Competition and Consumer Protection Commission",
            "general knowledge", AuthorityMark.FromMemory),
    ];
}
