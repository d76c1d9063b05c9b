using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice;

/// <summary>A fault hidden in the practice engine.</summary>
/// <param name="Place">What and where.</param>
/// <param name="Size">How big, in words.</param>
/// <param name="Mended">Whether it was named right and mended.</param>
public sealed record PracticeFault(FaultPlace Place, string Size, bool Mended);
