namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Canada: provinces and territories decide; Ontario stands as the example.</summary>
internal static class Canada
{
    public static IReadOnlyList<Authority> Lines { get; } =
    [
        new(HazardTopic.PetrolVapour, "The province's occupational health and safety law; Ontario alert on gasoline tank removal; CCOHS on fuel in garages", "provincial ministry of labour; Canadian Centre for Occupational Health and Safety",
            "ontario.ca alert; ccohs.ca, garages, fuel", AuthorityMark.Verified),
        new(HazardTopic.HotWork, "The province's law on hot work; Ontario Regulation 851 and its alert on gasoline tank removal: a gas-free certificate and a specialist, never here", "provincial ministry of labour",
            "ontario.ca alert and R.R.O. 1990, Reg. 851", AuthorityMark.Verified),
        new(HazardTopic.Storage, "National Fire Code of Canada as adopted by the province", "local fire department",
            "Canada Gazette SOR/2026-10 names the edition of 2020 for federal workplaces", AuthorityMark.Verified),
        new(HazardTopic.Waste, "The province's law on hazardous and liquid industrial waste", "provincial ministry of the environment",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.CarbonMonoxide, "Ontario Regulation 833 on chemical agents, or the province's own limits", "provincial ministry of labour",
            "ontario.ca, R.R.O. 1990, Reg. 833", AuthorityMark.Verified),
        new(HazardTopic.Asbestos, "Prohibition of Asbestos and Products Containing Asbestos Regulations; the province's asbestos regulation", "Environment and Climate Change Canada; provincial ministry of labour",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Lead, "The province's regulation on lead, such as Ontario Regulation 490/09 on designated substances", "provincial ministry of labour",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Mercury, "Products Containing Mercury Regulations; the province's exposure limits", "Environment and Climate Change Canada; provincial ministry of labour",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.VehicleSupport, "Ontario Regulation 851 on lifting devices and supported vehicles, or the province's own", "provincial ministry of labour",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Pressure, "The province's boilers and pressure vessels law", "technical standards authority of the province",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Batteries, "CCOHS on garages and battery charging", "Canadian Centre for Occupational Health and Safety",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.RoadEmissions, "The province's rules on vehicle emissions and inspection", "provincial ministry of transportation",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.HoseStandards, "CAN/CGSB-3.5 for fuel; SAE J30 for hose", "Canadian General Standards Board; SAE International",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Contract, "The province's consumer protection law; in Ontario the Consumer Protection Act, 2002, Part VI, and Regulation 17/05", "provincial consumer ministry",
            "ontario.ca, guide for auto repair businesses", AuthorityMark.Verified),
    ];
}
