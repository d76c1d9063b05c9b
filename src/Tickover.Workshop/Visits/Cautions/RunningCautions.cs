using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Cautions of the running engine.</summary>
internal static class RunningCautions
{
    public static IReadOnlyList<Caution> All { get; } =
    [
        new()
        {
            Key = "first-start",
            Stage = Stage.Balance,
            Step = "First fuel and first start",
            First = "Prime with the engine off and look for leaks first",
            Why = "Fuel that sprays on a hot exhaust is alight before anyone can reach the switch.",
            Conditions =
            [
                "Pump on, engine off, five minutes of looking under every joint.",
                "Second person with an extinguisher, eyes on the engine, hand near the cut-off.",
                "Air filters on where they can be; nobody looks down a barrel.",
                "No petrol poured into a barrel.",
                "Throttle proved to snap shut; know how the engine is stopped if it runs away.",
                "Look again with the engine running, then stop and look once more.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.CarbonMonoxide],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "when it fired, leaks and cures, oil pressure",
        },
        new()
        {
            Key = "indoors",
            Stage = Stage.Balance,
            Step = "Running the engine indoors",
            First = "Put the extraction on the tail pipe before the key",
            Why = "Carbon monoxide cannot be seen or smelled and can kill within minutes.",
            Conditions =
            [
                "Extraction hose on every tail pipe and drawing; doors open.",
                "Carbon monoxide alarm at head height, tested today.",
                "Alarm sounds: engine off, everyone out, no going back for tools.",
                "Headache or sickness counts as an alarm.",
                "Nobody works alone with an engine running.",
            ],
            Topics = [HazardTopic.CarbonMonoxide],
            Tablet = TabletPlace.InHand,
            EnterAfterwards = "extraction, alarm test, who was there",
        },
        new()
        {
            Key = "air-leaks",
            Stage = Stage.Balance,
            Step = "Hunting air leaks",
            First = "Choose smoke with the engine off before any spray",
            Why = "Flammable spray over a hot manifold lights, and gas that misses the leak gathers below.",
            Conditions =
            [
                "Smoke at low pressure with the engine off and cool is the first choice.",
                "Spray only as a last resort, in short bursts, nothing hot or sparking near.",
                "No flame, ever.",
                "Extinguisher in a second person's hand.",
                "Everything blanked for the test is written down and opened again.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.CarbonMonoxide],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "each joint tried, what was blanked and opened again",
        },
        new()
        {
            Key = "strobe",
            Stage = Stage.Balance,
            Step = "Strobe lamp and turning parts",
            First = "Tie sleeves, hair and leads back before the lamp is lit",
            Why = "Under a strobe the fan looks as if it stood still.",
            Conditions =
            [
                "Leads routed clear of fan and belts before starting.",
                "Electric fans isolated or kept clear of: they start by themselves.",
                "Lamp in one hand, the other behind the back.",
                "Ignition leads not touched while it runs.",
            ],
            Topics = [HazardTopic.CarbonMonoxide],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "timing and dwell per bank, with speed",
        },
        new()
        {
            Key = "hands-linkage",
            Stage = Stage.Balance,
            Step = "Balancing with hands near the linkage",
            First = "Keep face and hands out of the line of the barrels",
            Why = "A spit back through an open barrel throws flame, and a rod pulled by mistake races the engine.",
            Conditions =
            [
                "Out of gear, brake on, wheels chocked.",
                "Eye and ear protection; meter held from the side.",
                "Somebody can reach the ignition switch.",
                "Turn screws with a long driver; stop the engine to loosen a rod.",
                "Exhausts are hot enough to burn through sleeves.",
            ],
            Topics = [HazardTopic.CarbonMonoxide, HazardTopic.PetrolVapour],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "the round, with the speed beside each reading",
        },
        new()
        {
            Key = "mercury",
            Stage = Stage.Balance,
            Step = "Mercury columns",
            First = "Ask first whether they are needed at all",
            Why = "A column sucked dry or broken puts mercury into the engine, the floor and the air.",
            Conditions =
            [
                "Prefer gauges or columns without mercury.",
                "Traps and restrictors fitted, columns upright in a tray.",
                "Engine never raced with them connected.",
                "Spill: out, ventilate, call those who clean it up; no sweeping and no vacuum cleaner.",
                "Kept and given up as hazardous.",
            ],
            Topics = [HazardTopic.Mercury, HazardTopic.Waste],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "readings, and that the columns came off whole",
        },
        new()
        {
            Key = "exhaust-probe",
            Stage = Stage.Mixture,
            Step = "Probe in the exhaust",
            First = "Fit the probe cold, with the extraction still drawing",
            Why = "The tail pipe burns, and a probe that pushes the hose aside fills the bay with exhaust.",
            Conditions =
            [
                "Hose and probe share the pipe so that the extraction still draws.",
                "Alarm tested today, doors open.",
                "Gloves for heat; leads clear of the pipe and of moving parts.",
                "An exhaust leak ahead of the probe makes it read lean: look for it first.",
            ],
            Topics = [HazardTopic.CarbonMonoxide, HazardTopic.RoadEmissions],
            Tablet = TabletPlace.InHand,
            EnterAfterwards = "reading, depth of the probe, warm-up of the meter",
        },
        new()
        {
            Key = "jammed-throttle",
            Stage = Stage.Build,
            Step = "Setting the linkage: a throttle that can jam",
            First = "Prove that it shuts before anything is connected to it",
            Why = "A throttle that stays open on the road can kill.",
            Conditions =
            [
                "Two return springs, each able to shut it alone.",
                "No rod, lever or choke arm can ride over another or past its stop.",
                "Pedal stop takes the load before the carburettors do.",
                "Eye down each barrel at full pedal and at rest, ten times.",
                "Cable and carpet clear with the engine rocked on its mountings.",
            ],
            Topics = [HazardTopic.RoadEmissions],
            Tablet = TabletPlace.PutAside,
            EnterAfterwards = "rod lengths, springs, times tried, signature of the throttle check",
        },
    ];
}
