namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Great Britain: from the sources of the trade report, opened there unless marked from memory.</summary>
internal static class GreatBritain
{
    public static IReadOnlyList<Authority> Lines { get; } =
    [
        new(HazardTopic.PetrolVapour, "Dangerous Substances and Explosive Atmospheres Regulations 2002 (DSEAR); operational circular OC 803/71 on petrol in vehicle repair; HSG261", "Health and Safety Executive",
            "HSE OC 803/71 and HSG261", AuthorityMark.Verified),
        new(HazardTopic.HotWork, "INDG314 on hot work on small tanks and drums: a gas-free certificate and a specialist, never here", "Health and Safety Executive",
            "HSE INDG314", AuthorityMark.Verified),
        new(HazardTopic.Storage, "Petroleum (Consolidation) Regulations 2014", "petroleum enforcement authority of the place",
            "legislation.gov.uk and HSE pages on the regulations", AuthorityMark.Verified),
        new(HazardTopic.Waste, "Hazardous waste law with consignment notes; WISH WASTE 10 on petrol taken from vehicles", "environment agency of the nation",
            "WISH WASTE 10 seen; waste law from memory", AuthorityMark.FromMemory),
        new(HazardTopic.CarbonMonoxide, "EH40/2005 workplace exposure limits under the Control of Substances Hazardous to Health Regulations 2002 (COSHH)", "Health and Safety Executive",
            "HSE EH40 and pages on the change of August 2018", AuthorityMark.Verified),
        new(HazardTopic.Asbestos, "Control of Asbestos Regulations 2012; HSE page on asbestos in motor vehicles", "Health and Safety Executive",
            "HSE page on vehicle asbestos seen; regulations from memory", AuthorityMark.FromMemory),
        new(HazardTopic.Lead, "Control of Lead at Work Regulations 2002", "Health and Safety Executive",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Mercury, "EH40/2005 limit for mercury under COSHH; spill and disposal by a licensed carrier", "Health and Safety Executive",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.VehicleSupport, "Working under vehicles, INDG434; operational circular OC 803/69 on lifts and stands (LOLER, PUWER)", "Health and Safety Executive",
            "HSE OC 803/69", AuthorityMark.Verified),
        new(HazardTopic.Pressure, "GS4 on pressure testing; Pressure Systems Safety Regulations 2000", "Health and Safety Executive",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Batteries, "INDG139 on charging batteries", "Health and Safety Executive",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.RoadEmissions, "MOT inspection manual", "Driver and Vehicle Standards Agency",
            "MOT inspection manual, emissions", AuthorityMark.Verified),
        new(HazardTopic.HoseStandards, "BS EN 228 and BS EN 16942 for fuel and its labels; SAE J30 for hose", "British Standards Institution; SAE International",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Contract, "Consumer Rights Act 2015", "trading standards service of the place",
            "trading-standards guidance on vehicle repair", AuthorityMark.Verified),
    ];
}
