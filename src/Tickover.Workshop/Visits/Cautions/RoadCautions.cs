using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Cautions of road and garage.</summary>
internal static class RoadCautions
{
    public static IReadOnlyList<Caution> All { get; } =
    [
        new()
        {
            Key = "road-test",
            Stage = Stage.Road,
            Step = "Road test",
            First = "Hand the tablet to the passenger before the car moves",
            Why = "A driver who reads figures does not see the road, and an old car may not stop as hoped.",
            Conditions =
            [
                "Leak check and throttle check signed after the last work.",
                "Brakes, tyres and lights tried in the yard first.",
                "Licence, insurance and plates for this car and this driver.",
                "Driver never touches a device; the passenger writes.",
                "Extinguisher aboard; first mile near home, stop and look for leaks.",
                "Smell of petrol: stop, engine off, everyone out.",
            ],
            Topics = [HazardTopic.RoadEmissions, HazardTopic.PetrolVapour],
            Tablet = TabletPlace.InHand,
            EnterAfterwards = "route, weather, what was felt, leaks looked for afterwards",
        },
        new()
        {
            Key = "hot-soak",
            Stage = Stage.Road,
            Step = "Hot soak in a closed garage",
            First = "Open the garage before you go in to look",
            Why = "Petrol boiling out of hot bowls gathers at floor level overnight.",
            Conditions =
            [
                "No boiler, freezer, charger or pilot light in the same room.",
                "Vents at floor level open; car never left over a pit.",
                "Smell it at the door: do not touch a switch, air it first.",
                "Drip tray and paper under the carburettors.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.Storage],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "seconds of cranking, smell, bowl level, what the paper showed",
        },
    ];
}
