namespace Tickover.Workshop.Visits.Gates;

/// <summary>Checks before the road.</summary>
internal static class RoadChecks
{
    private const Disturbance Anything = Disturbance.FuelOrLinkage | Disturbance.Carburettors | Disturbance.Settings;

    public static IReadOnlyList<GateCheck> All { get; } =
    [
        new()
        {
            Key = GateKeys.RoadThrottle,
            Gate = Gate.FitForRoad,
            Name = "the throttle for the road",
            Words = "Pedal opens every plate fully and lets every plate shut, ten times out of ten",
            LookFor = "Engine off, a second person at the pedal, eye down each barrel; nothing can ride over, catch or pull out; carpet clear of the pedal.",
            Seen = "Who was at the pedal, how often, angle at full pedal.",
            Otherwise = "A throttle that jams open on the road can kill.",
            Source = "Common practice; a mandatory sign-off of the trade",
            StaleAfter = Anything,
        },
        new()
        {
            Key = GateKeys.RoadLeaks,
            Gate = Gate.FitForRoad,
            Name = "the leak check after running",
            Words = "No leak after running hot, shaken and stopped",
            LookFor = "Paper and torch at every joint after a hot run and again after ten minutes' standing; filler and vents too.",
            Seen = "How long it ran and stood, what dry was proved with.",
            Otherwise = "Joints that are dry cold may weep when heat and shaking have worked on them.",
            Source = "Common practice",
            StaleAfter = Anything,
        },
        new()
        {
            Key = "road-loose",
            Gate = Gate.FitForRoad,
            Name = "that nothing is loose",
            Words = "Nothing loose under the bonnet; pipes and leads clear of heat, belts and steering",
            LookFor = "Every clip and nut touched by hand, tools counted, air filters on, bonnet latched.",
            Seen = "Who looked, tools counted.",
            Otherwise = "A spanner left on a manifold falls into a belt or the linkage.",
            Source = "Common practice",
            StaleAfter = Anything,
        },
        new()
        {
            Key = "road-car",
            Gate = Gate.FitForRoad,
            Name = "car and papers",
            Words = "Brakes, tyres, lights and steering tried; papers, plates and insurance for the road in order",
            LookFor = "Pedal firm, tyres round and in date, lamps lit, steering free; extinguisher aboard; a second person to write.",
            Seen = "What was tried, and under whose insurance.",
            Otherwise = "A car that stood for years may go before it stops.",
            Source = "Local road law; common practice",
            StaleAfter = Disturbance.NextDay,
        },
    ];
}
