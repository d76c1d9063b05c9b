namespace Tickover.Workshop.Visits.Authorities;

/// <summary>What a law or a piece of guidance is about.</summary>
public enum HazardTopic
{
    /// <summary>Petrol vapour, draining, zones, sources of ignition.</summary>
    PetrolVapour,

    /// <summary>Heat and flame on tanks that held petrol.</summary>
    HotWork,

    /// <summary>Keeping petrol on the premises.</summary>
    Storage,

    /// <summary>Waste fuel, solvent and residues.</summary>
    Waste,

    /// <summary>Carbon monoxide and exhaust.</summary>
    CarbonMonoxide,

    /// <summary>Asbestos in gaskets and heat shields.</summary>
    Asbestos,

    /// <summary>Lead in old residues, and other substances on skin and in the air.</summary>
    Lead,

    /// <summary>Mercury in columns.</summary>
    Mercury,

    /// <summary>Jacks, stands, lifts, work underneath.</summary>
    VehicleSupport,

    /// <summary>Pressure tests and compressed air.</summary>
    Pressure,

    /// <summary>Batteries and charging.</summary>
    Batteries,

    /// <summary>Emissions and roadworthiness on the road.</summary>
    RoadEmissions,

    /// <summary>Standards of hose and fuel.</summary>
    HoseStandards,

    /// <summary>The contract with the owner.</summary>
    Contract,
}
