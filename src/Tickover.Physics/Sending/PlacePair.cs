using System.Runtime.Intrinsics;

namespace Tickover.Physics.Sending;

/// <summary>A place in each tank, as the weights with which the surface's slopes lift it.</summary>
/// <remarks>Lanes: sideways left, sideways right, lengthways left, lengthways right.</remarks>
internal readonly struct PlacePair
{
    internal PlacePair(TwoTanks pair, TankPlace left, TankPlace right)
    {
        Modal = Vector256.Create(
            SloshMode.Shape(left.LeftMetres, pair.Left.WidthMetres),
            SloshMode.Shape(right.LeftMetres, pair.Right.WidthMetres),
            SloshMode.Shape(left.AheadMetres, pair.Left.LengthMetres),
            SloshMode.Shape(right.AheadMetres, pair.Right.LengthMetres));
        Rest = Vector256.Create(left.LeftMetres, right.LeftMetres, left.AheadMetres, right.AheadMetres) - Modal;
    }

    /// <summary>What the first slosh lifts, m for a slope of one.</summary>
    internal Vector256<double> Modal { get; }

    /// <summary>What all others lift, which settle at once.</summary>
    internal Vector256<double> Rest { get; }
}
