namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Australia: states and territories adopt the model laws, some with changes.</summary>
internal static class Australia
{
    public static IReadOnlyList<Authority> Lines { get; } =
    [
        new(HazardTopic.PetrolVapour, "Model Work Health and Safety Regulations on flammable substances; automotive workshop guidelines of the state", "Safe Work Australia; WorkSafe or SafeWork of the state",
            "SafeWork SA automotive workshops guidelines; regulations from memory", AuthorityMark.FromMemory),
        new(HazardTopic.HotWork, "Model code of practice on welding processes; a gas-free certificate and a specialist, never here", "Safe Work Australia; regulator of the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Storage, "AS 1940 on storage and handling of flammable and combustible liquids", "Standards Australia; regulator of the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Waste, "The state's environment protection law on prescribed or trackable waste", "environment protection authority of the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.CarbonMonoxide, "Workplace exposure standards for airborne contaminants", "Safe Work Australia; regulator of the state",
            "safeworkaustralia.gov.au, list of publications", AuthorityMark.Verified),
        new(HazardTopic.Asbestos, "Model code of practice: How to manage and control asbestos in the workplace", "Safe Work Australia; regulator of the state",
            "safeworkaustralia.gov.au and the code of July 2020", AuthorityMark.Verified),
        new(HazardTopic.Lead, "Model Work Health and Safety Regulations, part on lead", "Safe Work Australia; regulator of the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Mercury, "Workplace exposure standards for airborne contaminants, mercury", "Safe Work Australia; regulator of the state",
            "list seen; its entry for mercury from memory", AuthorityMark.FromMemory),
        new(HazardTopic.VehicleSupport, "AS/NZS 2640 on portable ramps and AS/NZS 2538 on vehicle stands; the state's automotive workshop guidelines", "Standards Australia; regulator of the state",
            "guidelines seen; standards from memory", AuthorityMark.FromMemory),
        new(HazardTopic.Pressure, "Model code of practice on managing risks of plant; AS/NZS 3788 on pressure equipment in service", "Safe Work Australia; Standards Australia",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Batteries, "The state's automotive workshop guidelines on batteries", "WorkSafe or SafeWork of the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.RoadEmissions, "Roadworthiness rules of the state; Australian Design Rules of the car's year", "road authority of the state",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.HoseStandards, "Fuel Quality Standards determination for petrol; SAE J30 for hose", "Australian Government department for fuel quality; SAE International",
            "general knowledge", AuthorityMark.FromMemory),
        new(HazardTopic.Contract, "Australian Consumer Law; industry guide on motor vehicle sales and repairs", "Australian Competition and Consumer Commission; fair trading of the state",
            "guide of 2018 on motor vehicle sales and repairs", AuthorityMark.Verified),
    ];
}
