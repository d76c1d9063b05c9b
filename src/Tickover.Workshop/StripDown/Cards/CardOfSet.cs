using Tickover.Workshop.Visits;

namespace Tickover.Workshop.StripDown.Cards;

/// <summary>One carburettor of a set.</summary>
/// <param name="Carburettor">The carburettor.</param>
/// <param name="Barrels">Its barrels, in engine order.</param>
/// <param name="Noted">How many figures and words its card has.</param>
/// <param name="Asked">How many places on the card could be filled.</param>
/// <param name="Odd">What of it stands out of the set, each in words such as "Idle jet 55 in barrel 3; 50 in the others".</param>
public sealed record CardOfSet(Place Carburettor, IReadOnlyList<Place> Barrels, int Noted, int Asked, IReadOnlyList<string> Odd)
{
    /// <summary>The places of the card: the carburettor itself, then its barrels.</summary>
    public IReadOnlyList<Place> Places => [Carburettor, .. Barrels];
}
