namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Topics by their keys and words.</summary>
public static class HazardTopics
{
    /// <summary>The key under which a house keeps its own words: see <see cref="House.OwnAuthorities"/>.</summary>
    /// <param name="topic">The topic.</param>
    /// <returns>Key, such as "petrol-vapour".</returns>
    public static string Key(this HazardTopic topic) => topic switch
    {
        HazardTopic.PetrolVapour => "petrol-vapour",
        HazardTopic.HotWork => "hot-work",
        HazardTopic.CarbonMonoxide => "carbon-monoxide",
        HazardTopic.VehicleSupport => "vehicle-support",
        HazardTopic.RoadEmissions => "road-emissions",
        HazardTopic.HoseStandards => "hose-standards",
        _ => topic.ToString().ToLowerInvariant(),
    };

    /// <summary>The topic as it heads a line.</summary>
    /// <param name="topic">The topic.</param>
    /// <returns>Words, such as "Petrol vapour and draining".</returns>
    public static string Words(this HazardTopic topic) => topic switch
    {
        HazardTopic.PetrolVapour => "Petrol vapour and draining",
        HazardTopic.HotWork => "Hot work on tanks",
        HazardTopic.Storage => "Petrol storage",
        HazardTopic.Waste => "Waste fuel and residues",
        HazardTopic.CarbonMonoxide => "Carbon monoxide",
        HazardTopic.Lead => "Lead and harmful substances",
        HazardTopic.VehicleSupport => "Working under a car",
        HazardTopic.Pressure => "Pressure and compressed air",
        HazardTopic.RoadEmissions => "Emissions on the road",
        HazardTopic.HoseStandards => "Hose and fuel standards",
        HazardTopic.Contract => "Contract with the owner",
        _ => topic.ToString(),
    };
}
