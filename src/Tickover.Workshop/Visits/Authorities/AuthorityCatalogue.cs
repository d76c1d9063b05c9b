namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Whom to defer to, by country and topic. A list to start from: the workshop can put its own words in place of any line.</summary>
public static class AuthorityCatalogue
{
    private static readonly Dictionary<string, (string Name, IReadOnlyList<Authority> Lines)> ByCountry =
        new Dictionary<string, (string, IReadOnlyList<Authority>)>(StringComparer.OrdinalIgnoreCase)
        {
            ["GB"] = ("Great Britain", GreatBritain.Lines),
            ["IE"] = ("Ireland", Ireland.Lines),
            ["EU"] = ("European Union, in general", EuropeanUnion.Lines),
            ["US"] = ("United States", UnitedStates.Lines),
            ["CA"] = ("Canada", Canada.Lines),
            ["AU"] = ("Australia", Australia.Lines),
        };

    /// <summary>Codes of the countries in the list.</summary>
    public static IReadOnlyList<string> Countries { get; } = ["GB", "IE", "EU", "US", "CA", "AU"];

    /// <summary>A country's name.</summary>
    /// <param name="country">Its code.</param>
    /// <returns>The name; the code itself where it is not in the list.</returns>
    public static string NameOf(string country) => ByCountry.TryGetValue(country, out var known) ? known.Name : country;

    /// <summary>The built-in list of a country.</summary>
    /// <param name="country">Its code.</param>
    /// <returns>One line for each topic; none for a country that is not in the list.</returns>
    public static IReadOnlyList<Authority> Of(string country) => ByCountry.TryGetValue(country, out var known) ? known.Lines : [];

    /// <summary>Whom the workshop defers to on a topic.</summary>
    /// <param name="house">The workshop, with its country and its own words.</param>
    /// <param name="topic">The topic.</param>
    /// <returns>Its own words where it has any, else the country's line, else a line that sends to the local authority.</returns>
    public static Authority For(House house, HazardTopic topic)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house.OwnAuthorities.TryGetValue(topic.Key(), out var own) && !string.IsNullOrWhiteSpace(own)
            ? new Authority(topic, own.Trim(), "", "the workshop's settings", AuthorityMark.OwnWords)
            : Of(house.Country).FirstOrDefault(a => a.Topic == topic)
                ?? new Authority(topic, "The local law and its inspectorate; enter their names in the settings", "", "no built-in list for this country", AuthorityMark.OwnWords);
    }
}
