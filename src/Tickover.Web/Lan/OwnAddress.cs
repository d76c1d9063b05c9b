using System.Net;

namespace Tickover.Web.Lan;

/// <summary>An address of this machine and the network it is on.</summary>
/// <param name="Address">The address.</param>
/// <param name="PrefixLength">Leading bits that every machine of that network shares.</param>
internal sealed record OwnAddress(IPAddress Address, int PrefixLength)
{
    private const int BitsOfByte = 8;

    /// <summary>Whether another address is on the same network.</summary>
    public bool SharesNetworkWith(IPAddress other)
    {
        var (ours, theirs) = (Address.GetAddressBytes(), other.GetAddressBytes());
        return ours.Length == theirs.Length
            && Enumerable.Range(0, Math.Min(PrefixLength, ours.Length * BitsOfByte)).All(bit => Bit(ours, bit) == Bit(theirs, bit));
    }

    private static bool Bit(byte[] bytes, int bit) => (bytes[bit / BitsOfByte] & (1 << (BitsOfByte - 1 - (bit % BitsOfByte)))) != 0;
}
