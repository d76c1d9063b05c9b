using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Cautions of the bay itself.</summary>
internal static class BayCautions
{
    public static IReadOnlyList<Caution> All { get; } =
    [
        new()
        {
            Key = "under-car",
            Stage = Stage.Arrival,
            Step = "Working under the car or lifting it",
            First = "Set the stands before an arm goes under",
            Why = "A jack that creeps drops the car faster than anyone can move.",
            Conditions =
            [
                "Hard level floor, wheels that stay down chocked both ways.",
                "Stands under points meant for it, with proper pins; the jack is only for lifting.",
                "Push the car hard at the wing before going under.",
                "On a two-post lift: arms locked, rock the car at about a metre, then go up.",
                "Somebody else in the building knows that you are under it.",
            ],
            Topics = [HazardTopic.VehicleSupport],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "what it stands on, and what was seen underneath",
        },
        new()
        {
            Key = "battery",
            Stage = Stage.Arrival,
            Step = "Isolating, charging or jumping a battery",
            First = "Switch the charger off before a clamp is touched",
            Why = "A battery on charge gives off hydrogen, and one spark at a clamp can burst it.",
            Conditions =
            [
                "Eye protection on, rings and watch off.",
                "Earth lead off first and on last, tied where it cannot spring back.",
                "Never charge in the bay while any fuel joint or tank is open.",
                "A charger is connected before it is switched on and switched off before it is taken away.",
                "Check which pole is earthed on this car before anything is connected.",
            ],
            Topics = [HazardTopic.Batteries, HazardTopic.PetrolVapour],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "how and when the battery was isolated",
        },
    ];
}
