namespace Tickover.Practice.Virtual;

/// <summary>How big everything on the practice engine is, and where that comes from. [CP] common practice as the trade report gives it; [A] assumed.</summary>
internal static class Sizes
{
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>Lever of a stop screw, mm [CP: 26 to 30].</summary>
    public const double StopLever = 26;

    /// <summary>Lever of a rod, mm [A].</summary>
    public const double RodLever = 55;

    /// <summary>Fork of a spindle clamp, mm [A].</summary>
    public const double ClampLever = 25;

    /// <summary>A stop screw of 0.8 mm pitch [CP], degrees a turn.</summary>
    public const double StopGain = 0.8 / StopLever * DegreesPerRadian;

    /// <summary>A coupling or link screw of 0.5 mm pitch on the same lever [A], degrees a turn.</summary>
    public const double CouplingGain = 0.5 / StopLever * DegreesPerRadian;

    /// <summary>A rod with 0.8 mm a turn between its ends [A], degrees a turn.</summary>
    public const double RodGain = 0.8 / RodLever * DegreesPerRadian;

    /// <summary>The clamp: a "turn" of it is this much [A], degrees.</summary>
    public const double ClampGain = 3;

    /// <summary>Air a turn of a by-pass screw adds at idle [A], kg/h.</summary>
    public const double BypassAir = 0.5;

    /// <summary>Fuel a turn of an idle mixture screw adds, of all [A].</summary>
    public const double MixtureGain = 0.1;

    /// <summary>Fuel a turn, six flats, of a jet nut adds, of all [A].</summary>
    public const double JetNutGain = 0.24;

    /// <summary>What a screw of this engine does is within this part of nominal [A].</summary>
    public const double GainScatter = 0.25;

    /// <summary>How full cylinders are at idle: 0.25 to 0.35 [CP]; the middle of it.</summary>
    public static readonly (double Low, double High) IdleFilling = (0.27, 0.33);

    /// <summary>Plates of one carburettor against one another as fitted [A], standard deviation in degrees: some 0.15 kg/h at idle; more, and no healthy engine would come within 5 % off idle, where a by-pass no longer helps.</summary>
    public const double SeatScatter = 0.045;

    /// <summary>Stops as cars come in [A], standard deviation in degrees of a plate whose air grows by 65 % with a degree. With rods and seats, one engine in ten or so has barrels as far apart as 3.0 to 5.2 kg/h round a mean of 4.</summary>
    public const double StopScatter = 0.3;

    /// <summary>Rods, couplings and links as cars come in [A], degrees either way of such a plate.</summary>
    public static readonly (double Low, double High) RodsOut = (0.2, 0.5);

    /// <summary>The same where one rod is the hidden fault, so that there is one to be found [A].</summary>
    public static readonly (double Low, double High) RodsNearlyRight = (0.02, 0.1);

    /// <summary>Play of the ball ends of one rod: 0.15 to 0.25 mm on its lever [A], degrees.</summary>
    public static readonly (double Low, double High) Play = (0.15 / RodLever * DegreesPerRadian, 0.25 / RodLever * DegreesPerRadian);

    /// <summary>Intended clearance of the fork between constant-depression carburettors: 0.1 to 0.15 mm each way [CP: 0.15 mm], degrees.</summary>
    public static readonly (double Low, double High) Delay = (0.1 / ClampLever * DegreesPerRadian, 0.15 / ClampLever * DegreesPerRadian);

    /// <summary>Where plates of sound carburettors come to rest each time [A], standard deviation in degrees: 0.5 % of the idle air.</summary>
    public const double SoundUnrest = 0.008;

    /// <summary>A spindle train winds up against its springs [A], of its movement, from one carburettor to the next.</summary>
    public const double WindUp = 0.006;

    /// <summary>How far idle speed is from where it belongs as cars come in [A], of it.</summary>
    public static readonly (double Low, double High) IdleSpeedOut = (0.94, 1.12);

    /// <summary>Twist of a spindle [A], degrees.</summary>
    public static readonly (double Low, double High) Twist = (0.3, 1);

    /// <summary>A plate askew: air at idle [A], kg/h either way.</summary>
    public static readonly (double Low, double High) Askew = (0.5, 1.2);

    /// <summary>A rod too long or too short [A], degrees.</summary>
    public static readonly (double Low, double High) RodFault = (0.3, 1);

    /// <summary>A lever clamped wrong: air at 2,500 rpm [A], of all.</summary>
    public static readonly (double Low, double High) Lever = (0.04, 0.12);

    /// <summary>A leak below a plate [A; a leaking base was found behind 7 instead of 4 kg/h, trade report 2.2], kg/h.</summary>
    public static readonly (double Low, double High) Leak = (0.2, 0.8);

    /// <summary>A meter that does not seal misses this part [A].</summary>
    public static readonly (double Low, double High) Seal = (0.08, 0.25);

    /// <summary>A weak cylinder pulls less by this part [CP: leak-down of 20 % and more asks for repair].</summary>
    public static readonly (double Low, double High) Weak = (0.1, 0.25);

    /// <summary>One bank late [A], degrees.</summary>
    public static readonly (double Low, double High) Late = (4, 8);

    /// <summary>A worn spindle: where its plates come to rest [A], standard deviation in degrees.</summary>
    public static readonly (double Low, double High) WornUnrest = (0.06, 0.15);

    /// <summary>A worn spindle: air past each end [A], kg/h.</summary>
    public static readonly (double Low, double High) WornLeak = (0.05, 0.15);
}
