namespace Tickover.Physics.Inference;

/// <summary>What an answer makes of a belief.</summary>
/// <param name="Belief">The belief after it; the one before it where the answer was impossible.</param>
/// <param name="Chance">How probable the answer was beforehand, 0 to 1; 0: by what was believed it could not be.</param>
public sealed record Observed(Belief Belief, double Chance);
