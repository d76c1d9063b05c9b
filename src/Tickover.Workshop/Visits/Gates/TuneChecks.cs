namespace Tickover.Workshop.Visits.Gates;

/// <summary>Prerequisites of balance and mixture: ignition and wear imitate carburation.</summary>
internal static class TuneChecks
{
    private const string Source = "Common practice: balance is the last act of a tune-up and rests on all before it";

    public static IReadOnlyList<GateCheck> All { get; } =
    [
        Check("tune-compression", "compression", "Compression logged for every cylinder, leak-down of any odd one", Disturbance.Engine) with
        {
            LookFor = "Warm, throttles held open, all plugs out. Cylinders within about a tenth of each other.",
            Seen = "Highest and lowest, with the instrument.",
            Otherwise = "No screw makes a weak cylinder pull like its neighbours.",
        },
        Check("tune-valves", "valve clearances", "Valve clearances set to the maker's figures", Disturbance.Engine) with
        {
            LookFor = "Every valve, at the temperature the maker names.",
            Seen = "Clearances found and left.",
            Otherwise = "A valve held off its seat reads as a lean barrel.",
        },
        Check("tune-ignition", "timing and dwell", "Timing and dwell set on each bank, advance seen to move and come back", Disturbance.Engine) with
        {
            LookFor = "Strobe at idle and at speed, both banks within 1 degree of each other.",
            Seen = "Degrees at two speeds and dwell, per bank.",
            Otherwise = "Points that close up look like mixture that drifts.",
        },
        Check("tune-spark", "plugs and leads", "Plugs, leads and caps proved", Disturbance.Engine) with
        {
            LookFor = "Gap, resistance of each lead and cap, no tracking in the dark.",
            Seen = "Ohms of the leads, plug type and gap.",
            Otherwise = "A parted lead has sent people round every carburettor screw.",
        },
        Check("tune-floats", "float levels", "Float levels equal and passages proved", Disturbance.Carburettors) with
        {
            LookFor = "Wet level by sight tube with the real fuel at the real pressure; spray or light through each drilling.",
            Seen = "Wet levels, and that each passage was proved.",
            Otherwise = "A low bowl reads lean at every speed.",
        },
        Check("tune-linkage", "base nuts and linkage", "Base nuts even, linkage free, springs on, every stop screw touching its stop", Disturbance.Carburettors) with
        {
            LookFor = "Paper under each stop screw; rods off or slack while looking.",
            Seen = "Which stops touch, free play of the balls.",
            Otherwise = "A screw that does not touch its stop does nothing when it is turned.",
        },
        Check("tune-air", "that no air leaks in", "No false air at any joint, spindle or take-off; servo, advance and breather as noted", Disturbance.Carburettors | Disturbance.Engine) with
        {
            LookFor = "Smoke with the engine off, or a steady speed while each joint is tried.",
            Seen = "Joints tried and how; what was blanked.",
            Otherwise = "Air that enters below the plate is invisible to the airflow meter.",
        },
        Check("tune-hot", "that the engine is hot", "Hot through, choke fully off, fuel enough for the work, extraction on", Disturbance.NextDay) with
        {
            LookFor = "Oil above 70 °C or a quarter of an hour's drive; choke levers on their stops; fans and lights left alone.",
            Seen = "Oil temperature, litres in the tank.",
            Otherwise = "What is set on a warm engine is wrong on a hot one.",
        },
    ];

    private static GateCheck Check(string key, string name, string words, Disturbance staleAfter) => new()
    {
        Key = key,
        Gate = Gate.FitToTune,
        Name = name,
        Words = words,
        LookFor = "",
        Seen = "",
        Otherwise = "",
        Source = Source,
        StaleAfter = staleAfter,
    };
}
