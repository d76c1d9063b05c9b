namespace Tickover.Physics.Sending;

/// <summary>The pipe between two tanks. docs/physics/sending.md (3) to (8).</summary>
/// <remarks>Losses are shares of the velocity head in the full bore, entry and exit counted, one figure for each direction, so that a flap is a pipe with two of them.</remarks>
public sealed record CrossPipe
{
    /// <summary>Sharp entry 0.5 and exit 1 into the tank; Crane TP-410.</summary>
    public const double EndLosses = 1.5;

    /// <summary>Contraction of the jet behind a sharp hole; from memory, Idelchik.</summary>
    public const double Contraction = 0.62;

    /// <summary>Lengthening of the moving column at both ends together, in bores: between 0.8 and 1.7 for the two; from memory.</summary>
    public const double EndCorrectionBores = 1.2;

    /// <summary>Reynolds number up to which the flow is laminar.</summary>
    public const double LaminarReynolds = 2000;

    /// <summary>Reynolds number from which it is turbulent; between them the factor goes over smoothly.</summary>
    public const double TurbulentReynolds = 4000;

    /// <summary>Bore, m; above zero.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Length, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Roughness of the wall, m: 1.5 µm for drawn pipe.</summary>
    public double RoughnessMetres { get; init; } = 1.5e-6;

    /// <summary>Darcy's friction factor where it is taken as given at any flow; null: worked out from the flow.</summary>
    public double? FrictionFactor { get; init; }

    /// <summary>Losses of ends, bends and taps towards the right tank, share of the velocity head.</summary>
    public double LossToRight { get; init; } = EndLosses;

    /// <summary>The same towards the left tank.</summary>
    public double LossToLeft { get; init; } = EndLosses;

    /// <summary>Whether the moving column is lengthened by its ends; false: the pipe's own length.</summary>
    public bool EndCorrected { get; init; } = true;

    /// <summary>Mouth of the pipe above each tank's floor, m.</summary>
    public double MouthMetres { get; init; }

    /// <summary>How far each mouth lies from its tank's middle towards the other tank, m.</summary>
    public double MouthInwardMetres { get; init; }

    /// <summary>Area of the bore, m².</summary>
    public double AreaSquareMetres => Math.PI / 4 * BoreMetres * BoreMetres;

    /// <summary>Length of the moving column, m.</summary>
    public double ColumnMetres => LengthMetres + (EndCorrected ? EndCorrectionBores * BoreMetres : 0); // sending (33)

    /// <summary>Loss of a thin plate with a sharp hole in the pipe.</summary>
    /// <param name="holeMetres">Hole, m; above zero, not above the bore.</param>
    /// <returns>Share of the velocity head in the full bore.</returns>
    public double PlateLoss(double holeMetres)
    {
        Precondition.Within(holeMetres, double.Epsilon, BoreMetres);
        var share = holeMetres / BoreMetres * (holeMetres / BoreMetres);
        var loss = 1 / (Contraction * share) - 1;
        return loss * loss; // sending (7)
    }

    /// <summary>The same pipe with a restrictor in it.</summary>
    /// <param name="holeMetres">Its hole, m.</param>
    /// <returns>The pipe.</returns>
    public CrossPipe WithRestrictor(double holeMetres)
    {
        var loss = PlateLoss(holeMetres);
        return this with { LossToRight = LossToRight + loss, LossToLeft = LossToLeft + loss };
    }

    /// <summary>The same pipe with a flap that lets fuel through towards one tank only.</summary>
    /// <param name="towards">The side it opens to.</param>
    /// <param name="openLoss">Loss when open.</param>
    /// <param name="shutLoss">Loss of what leaks past it when shut.</param>
    /// <returns>The pipe.</returns>
    public CrossPipe WithFlap(TankSide towards, double openLoss = 2, double shutLoss = 20_000) => towards is TankSide.Left
        ? this with { LossToLeft = LossToLeft + openLoss, LossToRight = LossToRight + shutLoss }
        : this with { LossToRight = LossToRight + openLoss, LossToLeft = LossToLeft + shutLoss };

    /// <summary>Darcy's friction factor at a Reynolds number, 64/Re up to 2000, Haaland's from 4000, gone over smoothly between.</summary>
    /// <param name="reynolds">Above zero.</param>
    /// <returns>The factor.</returns>
    public double FrictionAt(double reynolds)
    {
        if (FrictionFactor is { } given)
        {
            return given;
        }

        var laminar = 64 / reynolds; // sending (5)
        return reynolds <= LaminarReynolds ? laminar : Blend(reynolds, laminar, Haaland(reynolds, RoughnessTerm));
    }

    internal double RoughnessTerm => Math.Pow(RoughnessMetres / BoreMetres / 3.7, 1.11);

    internal static double Haaland(double reynolds, double roughness)
    {
        var root = 1.8 * Math.Log10(roughness + 6.9 / reynolds); // sending (6)
        return 1 / (root * root);
    }

    internal static double Blend(double reynolds, double laminar, double turbulent)
    {
        var u = Math.Min(1, (reynolds - LaminarReynolds) / (TurbulentReynolds - LaminarReynolds));
        return laminar + u * u * (3 - 2 * u) * (turbulent - laminar);
    }
}
