namespace Tickover.Instruments.Logs;

/// <summary>Unit of a column and how its figures become SI (speeds of engines: rpm; throttles: as they are).</summary>
/// <param name="Name">As it is written and read, such as "mmHg vac" or "AFR 14.7".</param>
/// <param name="Scale">Factor.</param>
/// <param name="Offset">Offset, in SI.</param>
/// <param name="Form">How both are used.</param>
public sealed record LogUnit(string Name, double Scale, double Offset = 0, UnitForm Form = UnitForm.Linear)
{
    /// <summary>A figure in SI.</summary>
    /// <param name="figure">The figure in the column.</param>
    /// <param name="barometerPascals">Pressure of the air outside, Pa, for pressures not absolute.</param>
    /// <returns>In SI; NaN for NaN.</returns>
    public double ToSi(double figure, double barometerPascals) => Form switch
    {
        UnitForm.Inverse => figure is 0 ? double.NaN : Scale / figure,
        UnitForm.OverAtmosphere => barometerPascals + figure * Scale,
        UnitForm.UnderAtmosphere => barometerPascals - figure * Scale,
        _ => figure * Scale + Offset,
    };

    /// <inheritdoc/>
    public override string ToString() => Name;
}
