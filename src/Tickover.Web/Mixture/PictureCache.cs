using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>Pictures of maps, kept as long as their map is: a tap on a map draws it anew on the page and not on the server.</summary>
/// <remarks>Safe for several threads.</remarks>
internal sealed class PictureCache
{
    private readonly ConditionalWeakTable<MixtureMap, ConcurrentDictionary<string, Lazy<string>>> _pictures = [];

    /// <summary>A picture of a map.</summary>
    /// <param name="map">The map it shows; of a difference, the trial's.</param>
    /// <param name="name">What else decides how it looks, in words.</param>
    /// <param name="draw">Draws it.</param>
    /// <returns>The picture.</returns>
    public string Find(MixtureMap map, string name, Func<string> draw) =>
        _pictures.GetOrCreateValue(map).GetOrAdd(name, _ => new Lazy<string>(draw)).Value;
}
