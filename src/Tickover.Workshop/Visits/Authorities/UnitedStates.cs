namespace Tickover.Workshop.Visits.Authorities;

/// <summary>United States: states with plans of their own and the local fire code may ask for more.</summary>
internal static class UnitedStates
{
    public static IReadOnlyList<Authority> Lines { get; } =
    [
        new(HazardTopic.PetrolVapour, "29 CFR 1910.106 on flammable liquids; NFPA 30A on repair garages as adopted by the place", "Occupational Safety and Health Administration; local fire marshal",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.HotWork, "29 CFR 1910.252 on welding and used containers; a gas-free certificate and a specialist, never here", "Occupational Safety and Health Administration",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Storage, "29 CFR 1910.106 and the local fire code", "Occupational Safety and Health Administration; local fire marshal",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Waste, "40 CFR Parts 260 to 273, hazardous waste", "Environmental Protection Agency and the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.CarbonMonoxide, "29 CFR 1910.1000 Table Z-1: 50 ppm over 8 hours; NIOSH recommends 35 ppm", "Occupational Safety and Health Administration; NIOSH",
            "archived osha.gov page of Table Z-1; NIOSH criteria document of 1972", AuthorityMark.Verified),
        new(HazardTopic.Asbestos, "29 CFR 1910.1001 with its Appendix F on brake and clutch work", "Occupational Safety and Health Administration",
            "text of Appendix F in the information collection of OMB 1218-0133", AuthorityMark.Verified),
        new(HazardTopic.Lead, "29 CFR 1910.1025 on lead", "Occupational Safety and Health Administration",
            "published copy of its Appendix B", AuthorityMark.Verified),
        new(HazardTopic.Mercury, "NIOSH 99-111 on mercury; 29 CFR 1910.1000 Table Z-2", "NIOSH; Occupational Safety and Health Administration",
            "NIOSH 99-111, by the trade report", AuthorityMark.Verified),
        new(HazardTopic.VehicleSupport, "OSHA pages on vehicle lifts; ANSI/ALI ALOIM on operation and inspection of lifts", "Occupational Safety and Health Administration",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Pressure, "29 CFR 1910.169 on air receivers and 1910.242(b) on compressed air for cleaning", "Occupational Safety and Health Administration",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Batteries, "29 CFR 1926.441 and 1910.178(g) as practice for charging batteries", "Occupational Safety and Health Administration",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.RoadEmissions, "Clean Air Act section 203 on tampering; the state's inspection programme", "Environmental Protection Agency and the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.HoseStandards, "SAE J30 for hose; ASTM D4814 for fuel", "SAE International; ASTM International",
            "SAE J30, by the trade report; ASTM from memory", AuthorityMark.FromMemory),
        new(HazardTopic.Contract, "The state's law on auto repair estimates and authorisation", "state attorney general or bureau of automotive repair",
            "general knowledge", AuthorityMark.FromMemory),
    ];
}
