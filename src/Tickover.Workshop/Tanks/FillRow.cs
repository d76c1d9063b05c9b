using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks;

/// <summary>A step of a fill beside the shape, in the units of the workshop.</summary>
/// <param name="Litres">Poured in so far, l.</param>
/// <param name="DipMillimetres">Read, mm.</param>
/// <param name="DrawnMillimetres">The dip the shape gives as drawn, mm.</param>
/// <param name="FittedMillimetres">The dip it gives set right, mm.</param>
/// <param name="FuelLitres">Fuel at the dip read by the shape set right, l.</param>
/// <param name="BandLitres">90 % band of that, ± l.</param>
/// <param name="StandsOut">Whether it stands out from the others.</param>
public sealed record FillRow(
    double Litres, double DipMillimetres, double DrawnMillimetres, double FittedMillimetres, double FuelLitres, double BandLitres, bool StandsOut)
{
    private const double Band = 1.645; // standard deviations: 90 %

    /// <summary>The rows of a comparison.</summary>
    /// <param name="fit">The comparison.</param>
    /// <returns>In the order of the fill.</returns>
    public static IReadOnlyList<FillRow> Of(FillFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return [.. fit.Lines.Select(l => new FillRow(
            TankUnits.Litres(l.Read.PouredCubicMetres), TankUnits.Millimetres(l.Read.DipMetres), TankUnits.Millimetres(l.DrawnDipMetres), TankUnits.Millimetres(l.FittedDipMetres),
            TankUnits.Litres(l.FittedCubicMetres), Band * TankUnits.Litres(l.BandCubicMetres), l.StandsOut))];
    }
}
