namespace Tickover.Physics.Sending;

/// <summary>The pipe between two tanks.</summary>
public sealed record CrossPipe
{
    /// <summary>Inside diameter, m.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Length, m.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Losses of entry, bends, taps and exit on the way from left to right, in heads of the speed in the pipe, 1.</summary>
    public double LossToRight { get; init; } = UsualLoss;

    /// <summary>The same from right to left; differs with a flap.</summary>
    public double LossToLeft { get; init; } = UsualLoss;

    /// <summary>Length that each end adds to what has to be moved, in bores, 1.</summary>
    public double EndCorrectionBores { get; init; } = 0.4;

    /// <summary>Height of the wall's roughness, m: drawn tube 1.5 µm.</summary>
    public double RoughnessMetres { get; init; } = 1.5e-6;

    /// <summary>A friction factor (Darcy) that holds at every speed, 1; none: laminar and turbulent by the Reynolds number.</summary>
    public double? FrictionFactor { get; init; }

    /// <summary>Entry 0.5, exit 1.0 and a little for two bends.</summary>
    public const double UsualLoss = 2.5;

    /// <summary>Loss of a sharp-edged hole in a plate across the pipe, in heads of the speed in the pipe, 1.</summary>
    /// <param name="holeMetres">The hole, m; smaller than the bore.</param>
    /// <param name="boreMetres">The pipe, m.</param>
    /// <returns>1.</returns>
    /// <remarks>I. E. Idelchik, Handbook of Hydraulic Resistance, sudden contraction and expansion of the jet (from memory).</remarks>
    public static double PlateLoss(double holeMetres, double boreMetres)
    {
        const double contraction = 0.62;
        var opening = Math.Pow(Precondition.Positive(holeMetres) / Precondition.Positive(boreMetres), 2);
        var excess = 1 / (contraction * Precondition.Within(opening, 0, 1)) - 1;
        return excess * excess; // sending (7)
    }

    internal double AreaSquareMetres => Math.PI / 4 * BoreMetres * BoreMetres;

    internal double InertiaLengthMetres => LengthMetres + 2 * EndCorrectionBores * BoreMetres;

    internal CrossPipe Checked()
    {
        Precondition.Positive(BoreMetres);
        Precondition.Positive(LengthMetres);
        Precondition.NotNegative(LossToRight);
        Precondition.NotNegative(LossToLeft);
        Precondition.NotNegative(EndCorrectionBores);
        Precondition.NotNegative(RoughnessMetres);
        return this;
    }
}
