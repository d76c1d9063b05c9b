namespace Tickover.Workshop.Visits.Authorities;

/// <summary>European Union in general: directives bind through national law, so the member state's own text decides.</summary>
internal static class EuropeanUnion
{
    public static IReadOnlyList<Authority> Lines { get; } =
    [
        new(HazardTopic.PetrolVapour, "Directive 1999/92/EC on workers at risk from explosive atmospheres", "labour inspectorate of the member state",
            "osha.europa.eu, page on the directive", AuthorityMark.Verified),
        new(HazardTopic.HotWork, "Directive 1999/92/EC with its permit to work; a gas-free certificate and a specialist, never here", "labour inspectorate of the member state",
            "osha.europa.eu, page on the directive", AuthorityMark.Verified),
        new(HazardTopic.Storage, "National rules for the storage of flammable liquids", "fire and building authority of the place",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Waste, "Directive 2008/98/EC on waste and the national rules for hazardous waste", "environment authority of the member state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.CarbonMonoxide, "Directive 98/24/EC on chemical agents with its indicative limit values", "labour inspectorate of the member state",
            "eur-lex.europa.eu, 98/24/EC", AuthorityMark.Verified),
        new(HazardTopic.Asbestos, "Directive 2009/148/EC on asbestos at work, amended by (EU) 2023/2668", "labour inspectorate of the member state",
            "eur-lex.europa.eu, (EU) 2023/2668", AuthorityMark.Verified),
        new(HazardTopic.Lead, "Directive 98/24/EC on chemical agents, with its limit for lead", "labour inspectorate of the member state",
            "eur-lex.europa.eu, 98/24/EC; its limit for lead from memory", AuthorityMark.FromMemory),
        new(HazardTopic.Mercury, "Regulation (EU) 2017/852 on mercury", "environment authority of the member state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.VehicleSupport, "Directive 2009/104/EC on work equipment", "labour inspectorate of the member state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Pressure, "Directive 2014/68/EU on pressure equipment; national rules for its use", "inspectorate of the member state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Batteries, "Directive 89/391/EEC on health and safety at work: the duty to assess risks of charging", "labour inspectorate of the member state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.RoadEmissions, "Directive 2014/45/EU on roadworthiness tests, with national rules for vehicles of historic interest", "test authority of the member state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.HoseStandards, "EN 228 and EN 16942 for fuel and its labels; SAE J30 or ISO 19013 for hose", "European Committee for Standardization",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Contract, "National consumer contract law for services", "consumer authority of the member state",
            "general knowledge", AuthorityMark.FromMemory),
    ];
}
