using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>The constants the textbooks' examples are worked with.</summary>
internal static class Textbook
{
    /// <summary>Free fall, m/s².</summary>
    public const double Gravity = 9.81;

    /// <summary>A millimetre of mercury, Pa.</summary>
    public const double PascalsPerMillimetreOfMercury = 133.322387415;

    /// <summary>Air of R 287 J/(kg K) and γ 1.4; the books' cp of 1005 is 0.05 % above what these give.</summary>
    public static IdealGas Air { get; } = new(287, 1.4);
}
