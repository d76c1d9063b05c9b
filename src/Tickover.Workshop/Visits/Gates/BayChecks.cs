namespace Tickover.Workshop.Visits.Gates;

/// <summary>Checks before fuel is touched.</summary>
internal static class BayChecks
{
    private const string Source = "HSE operational circular OC 803/71 on petrol in vehicle repair; common practice";

    public static IReadOnlyList<GateCheck> All { get; } =
    [
        new()
        {
            Key = "bay-place",
            Gate = Gate.BayReady,
            Name = "the place of the car",
            Words = "Level bay, wheels chocked, away from pits and drains",
            LookFor = "Level floor, chocks both ways, no pit, drain or cellar opening within the zone of your site's plan, doors that open.",
            Seen = "Which bay, and where the nearest pit or drain is.",
            Otherwise = "Petrol vapour is heavier than air and lies in pits and drains.",
            Source = Source,
            StaleAfter = Disturbance.None,
        },
        new()
        {
            Key = "bay-ignition",
            Gate = Gate.BayReady,
            Name = "that nothing can light the vapour",
            Words = "No heater, charger, grinding or flame; tablets and telephones have a place outside the zone",
            LookFor = "Heaters, chargers, lamps without a rating, grinding next door, radiator fans that start by themselves.",
            Seen = "What was switched off or moved, and where the tablet lies.",
            Otherwise = "Petrol vapour lights from about 1 to 8 per cent in air; one spark is enough.",
            Source = Source,
            StaleAfter = Disturbance.None,
        },
        new()
        {
            Key = "bay-battery",
            Gate = Gate.BayReady,
            Name = "the battery isolated",
            Words = "Battery isolated before any fuel joint is opened, charger off",
            LookFor = "Earth lead off and tied back, or the isolator out; charger unplugged at the wall.",
            Seen = "How it was isolated.",
            Otherwise = "Fans, pumps and senders can spark when a joint is open.",
            Source = Source,
            StaleAfter = Disturbance.None,
        },
        new()
        {
            Key = "bay-fire",
            Gate = Gate.BayReady,
            Name = "extinguisher and spill kit",
            Words = "Extinguisher for liquid fires within reach, in date; spill kit out",
            LookFor = "Foam, carbon dioxide or dry powder, gauge in its band, date of service; absorbent that is meant for petrol.",
            Seen = "Kind of extinguisher and date of its service.",
            Otherwise = "Most petrol fires of the trade start while draining, and they grow in seconds.",
            Source = Source,
            StaleAfter = Disturbance.None,
        },
        new()
        {
            Key = "bay-air",
            Gate = Gate.BayReady,
            Name = "air and alarm",
            Words = "Doors open or extraction on; carbon monoxide alarm at head height works",
            LookFor = "Air moving at floor level, alarm tested by its button today.",
            Seen = "What is open or running, alarm tested.",
            Otherwise = "Vapour gathers at the floor and carbon monoxide cannot be smelled.",
            Source = Source,
            StaleAfter = Disturbance.None,
        },
    ];
}
