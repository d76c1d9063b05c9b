using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>State of a group at four operating points: its chains, the shared volume, the barrels on it, and the mean exhaust flow.</summary>
internal sealed class GroupState(int cylinders, int barrels, bool shared)
{
    internal ChainState[] Chains { get; } = new ChainState[cylinders];

    /// <summary>Shared volume; unused without one.</summary>
    internal GasVolume Node;

    /// <summary>Flow of the barrels into the shared volume, kg/s.</summary>
    internal Vector256<double>[] Barrels { get; } = new Vector256<double>[shared ? barrels : 0];

    /// <summary>Mean exhaust flow of a cylinder, kg/s: it sets the back-pressure of the next cycle.</summary>
    internal Vector256<double> ExhaustFlow;

    /// <summary>Number of numbers in the state of one point.</summary>
    internal int Size => Chains.Length * ChainState.Components + 1 + (Barrels.Length > 0 ? 3 + Barrels.Length : 0);

    internal void CopyFrom(GroupState other)
    {
        other.Chains.CopyTo(Chains, 0);
        other.Barrels.CopyTo(Barrels, 0);
        Node = other.Node;
        ExhaustFlow = other.ExhaustFlow;
    }

    internal void Read(int lane, Span<double> values)
    {
        var at = 0;
        foreach (ref readonly var chain in Chains.AsSpan())
        {
            for (var c = 0; c < ChainState.Components; c++)
            {
                values[at++] = chain.Get(c, lane);
            }
        }

        values[at++] = ExhaustFlow[lane];
        if (Barrels.Length > 0)
        {
            values[at++] = Node.Mass[lane];
            values[at++] = Node.Burnt[lane];
            values[at++] = Node.Energy[lane];
            foreach (var barrel in Barrels)
            {
                values[at++] = barrel[lane];
            }
        }
    }

    internal void Write(int lane, ReadOnlySpan<double> values)
    {
        var at = 0;
        foreach (ref var chain in Chains.AsSpan())
        {
            for (var c = 0; c < ChainState.Components; c++)
            {
                chain.Set(c, lane, values[at++]);
            }
        }

        ExhaustFlow = ExhaustFlow.WithElement(lane, values[at++]);
        if (Barrels.Length > 0)
        {
            Node.Mass = Node.Mass.WithElement(lane, values[at++]);
            Node.Burnt = Node.Burnt.WithElement(lane, values[at++]);
            Node.Energy = Node.Energy.WithElement(lane, values[at++]);
            for (var b = 0; b < Barrels.Length; b++)
            {
                Barrels[b] = Barrels[b].WithElement(lane, values[at++]);
            }
        }
    }
}
