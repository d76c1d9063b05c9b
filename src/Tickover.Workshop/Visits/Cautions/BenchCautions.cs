using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Cautions of the bench.</summary>
internal static class BenchCautions
{
    public static IReadOnlyList<Caution> All { get; } =
    [
        new()
        {
            Key = "asbestos",
            Stage = Stage.StripDown,
            Step = "Old gaskets and heat shields",
            First = "Wet it before it is touched",
            Why = "Gaskets and shields of that age may hold asbestos, and its dust harms years later.",
            Conditions =
            [
                "Treat a gasket of unknown make as asbestos until it is tested.",
                "Wet it, lift it whole, double-bag and label it.",
                "No dry scraping, wire brush, sanding or air line.",
                "Mask and overalls as your law asks; wipe down wet, never sweep.",
                "Asbestos parts are not refitted and not handed out.",
            ],
            Topics = [HazardTopic.Asbestos, HazardTopic.Waste],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "where it was found, whether tested, where the bag is",
        },
        new()
        {
            Key = "residues",
            Stage = Stage.StripDown,
            Step = "Lead and varnish residues",
            First = "Put gloves on before the bowl is opened",
            Why = "Dried fuel of old grades may hold lead, which goes through the skin and on to food.",
            Conditions =
            [
                "Bowls emptied into a closed container outside the zone of sparks.",
                "Wipe wet; no dry brushing and no blowing out of dust.",
                "No eating or drinking at the bench; wash before breaks.",
                "Rags into a lidded metal bin.",
            ],
            Topics = [HazardTopic.Lead, HazardTopic.PetrolVapour, HazardTopic.Waste],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "as-found card of the carburettor",
        },
        new()
        {
            Key = "solvent",
            Stage = Stage.StripDown,
            Step = "Solvent and ultrasonic cleaning",
            First = "Check that no flammable solvent is near the ultrasonic bath",
            Why = "A warm bath turns solvent into vapour and its switch lights it.",
            Conditions =
            [
                "Water-based solution only in the bath, lid on, extraction on.",
                "No petrol as a cleaner, ever.",
                "Gloves and goggles; read the sheet of the product first.",
                "Parts drained and rinsed outside the bath; nothing soaked overnight unattended.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.Lead, HazardTopic.Waste],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "solution, temperature, minutes, passages proved",
        },
        new()
        {
            Key = "compressed-air",
            Stage = Stage.StripDown,
            Step = "Compressed air",
            First = "Put eye protection on before the trigger",
            Why = "Air drives jets, balls and cleaner out of a casting like shot.",
            Conditions =
            [
                "Low pressure by the regulator; never on skin or clothing.",
                "Point drillings into a cloth and away from people.",
                "Hold small parts captive: check balls and lead plugs leave without warning.",
                "No air into a bowl with fuel in it, nor on dust of old gaskets.",
            ],
            Topics = [HazardTopic.Pressure, HazardTopic.Asbestos],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "which passages were proved, and how",
        },
    ];
}
