namespace Tickover.Reports.Paper;

/// <summary>A square code that leads to an address, with the address beside it.</summary>
/// <param name="Address">Where it leads.</param>
/// <param name="Words">What is there.</param>
internal sealed record QrLink(string Address, string Words) : Block;
