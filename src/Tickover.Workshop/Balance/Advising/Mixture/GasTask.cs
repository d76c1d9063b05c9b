using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>What is set by gas: one screw by the λ of its cylinder, or all screws of a bank alike by the λ of the bank.</summary>
/// <param name="Screw">The screw, or one that stands for all of the bank.</param>
/// <param name="Where">What it is called.</param>
/// <param name="HowToRead">How λ is read of it.</param>
internal sealed record GasTask(Adjuster Screw, string Where, string HowToRead);
