namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>The books and standards the checks name.</summary>
public static class Sources
{
    public const string StandardAtmosphere = "ISO 2533:1975 / U.S. Standard Atmosphere 1976, geopotential table";
    public const string Harrington = "Plate area of Harrington and Bolt, SAE 700082, as in Heywood 1988 eq. 7.18-7.21 (form from memory), evaluated by quadrature";
    public const string Lichtarowicz = "Lichtarowicz, Duggins and Markland, J. Mech. Eng. Sci. 7(2) 1965, eq. (7) and (12) as transcribed in open projects, evaluated independently";
    public const string Gas = "One-dimensional gas dynamics, γ as stated, evaluated independently";
    public const string Geometry = "Plane geometry, evaluated independently";
    public const string Stoichiometry = "Complete combustion in air of 20.95 % oxygen, evaluated independently";

    public static string Ganesan(string example) => $"V. Ganesan, Internal Combustion Engines (edition from memory), ex. {example}";

    public static string Gupta(string example) => $"H. N. Gupta, Fundamentals of Internal Combustion Engines, 1st ed. 2006, ex. {example}";

    public static string Rajput(string example) => $"R. K. Rajput, A Textbook of Internal Combustion Engines, 2nd ed. 2007, ex. {example}";

    public static string Mathur(string example) => $"M. L. Mathur and R. P. Sharma, Internal Combustion Engine, 8th ed. 2010, ex. {example}";

    public static string Keswani(string example) => $"H. B. Keswani, Internal Combustion Engines, 4th ed. 2003, ex. {example}";

    public static string Cengel(string example) => $"Y. Çengel and M. Boles, Thermodynamics, 5th ed. 2006, {example}";

    public static string Heywood(string place) => $"J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, {place}";

    /// <summary>The inputs are an author's, the answer was worked out for this project.</summary>
    /// <param name="example">The source of the inputs.</param>
    /// <returns>The words for the page.</returns>
    public static string Reworked(string example) => $"Inputs of {example}; answer worked out independently";
}
