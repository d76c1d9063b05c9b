namespace Tickover.Practice.Virtual;

/// <summary>One barrel with what is true of it and of the cylinders it feeds.</summary>
internal sealed class VirtualBarrel
{
    /// <summary>Number from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Its carburettor, from 0.</summary>
    public required int Carburettor { get; init; }

    /// <summary>Its bank, from 1.</summary>
    public required int Bank { get; init; }

    /// <summary>Swept volume it feeds, cm³.</summary>
    public required double Swept { get; init; }

    /// <summary>Gap that passes a kg/h at idle, mm².</summary>
    public required double AreaPerAir { get; init; }

    /// <summary>How the plate sits in its bore against its neighbours, degrees.</summary>
    public required double Seat { get; init; }

    /// <summary>By-pass screw, mm² a turn; null where there is none.</summary>
    public Screw? Bypass { get; init; }

    /// <summary>Mixture screw or jet nut, part of the fuel a turn.</summary>
    public required Screw Mixture { get; init; }

    /// <summary>Spindle ends let so much in that no meter sees, mm².</summary>
    public double SpindleLeak { get; set; }

    /// <summary>Spindle twisted so far, degrees.</summary>
    public double Twist { get; set; }

    /// <summary>A plate seated askew adds so much gap, mm².</summary>
    public double AskewArea { get; set; }

    /// <summary>Gap below the plate that lets air in, mm².</summary>
    public double LeakArea { get; set; }

    /// <summary>How hard the cylinder pulls, of 1.</summary>
    public double Pull { get; set; } = 1;

    /// <summary>Part of the air the meter catches, of 1.</summary>
    public double Seal { get; set; } = 1;
}
