namespace Tickover.Reports.Balance;

/// <summary>How deep things lie across an engine in line, from the head outwards, drawing units.</summary>
internal sealed record InLineDepths
{
    internal static readonly InLineDepths Lying = new()
    {
        HeadDepth = 60,
        CylinderRadius = 17,
        BodyStart = 92,
        Spindle = 108,
        Bypass = 132,
        Mixture = 177,
        Number = 164,
        BodyEnd = 194,
        TrumpetEnd = 218,
        AirLength = 20,
        Pitch = 0,
        Reach = 54,
        FrontRoom = 0,
    };

    internal static readonly InLineDepths Upright = new()
    {
        HeadDepth = 46,
        CylinderRadius = 16,
        BodyStart = 70,
        Spindle = 82,
        Bypass = 100,
        Mixture = 145,
        Number = 128,
        BodyEnd = 160,
        TrumpetEnd = 178,
        AirLength = 16,
        Pitch = 94,
        Reach = 44,
        FrontRoom = 44,
    };

    internal required double HeadDepth { get; init; }

    internal required double CylinderRadius { get; init; }

    internal required double BodyStart { get; init; }

    internal required double Spindle { get; init; }

    internal required double Bypass { get; init; }

    internal required double Mixture { get; init; }

    internal required double Number { get; init; }

    internal required double BodyEnd { get; init; }

    internal required double TrumpetEnd { get; init; }

    internal required double AirLength { get; init; }

    /// <summary>Pitch of the barrels where the engine stands upright and may be as long as it needs.</summary>
    internal required double Pitch { get; init; }

    /// <summary>Largest reach of a ring.</summary>
    internal required double Reach { get; init; }

    /// <summary>Room before the engine for the word at its front.</summary>
    internal required double FrontRoom { get; init; }
}
