using System.Globalization;
using System.Text.RegularExpressions;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>Says the product's own words the British or the American way. What people typed is theirs and is never put through it.</summary>
public static class TradeVocabulary
{
    // Where a word means something else than its pair, the phrase stands for itself: the choke of a cold start is a choke on both sides.
    private static readonly string[] AlikeOnBothSides =
    [
        "choke off", "choke fully off", "choke cable", "choke lever", "choke arm", "choke cam", "choke control", "on choke", "full choke", "not choke",
        "balance pipe", "spring balance", "air balance screw", "bank balance", "idle jet nut",
    ];

    /// <summary>The pairs, in the order of the alphabet.</summary>
    public static IReadOnlyList<WordPair> Pairs { get; } =
    [
        new("air corrector", "air jet", "jet that leans the main circuit at high flow"),
        new("air leak", "vacuum leak", "air entering past the carburettor"),
        new("auxiliary venturi", "booster", "small venturi in the barrel's centre"),
        new("balance", "synchronization", "all barrels passing equal air") { HasPlural = false },
        new("balanced", "synchronized", "made to pass equal air") { HasPlural = false },
        new("balancing", "synchronizing", "making all barrels pass equal air") { HasPlural = false },
        new("blank off", "cap", "close a take-off for a test") { HasPlural = false },
        new("blanked", "capped", "closed for a test") { HasPlural = false },
        new("blanked off", "capped", "closed for a test") { HasPlural = false },
        new("bonnet", "hood", "engine cover"),
        new("butterfly", "throttle blade", "disc controlling air"),
        new("carburettor", "carburetor", "mixes fuel and air"),
        new("choke", "venturi", "narrow part of the barrel"),
        new("circlip", "snap ring", "retaining ring"),
        new("depression", "vacuum", "pressure below atmosphere"),
        new("earth", "ground", "return path") { HasPlural = false },
        new("earthed", "grounded", "joined to the return path") { HasPlural = false },
        new("false air", "vacuum leak", "air entering past the carburettor") { HasPlural = false },
        new("idle jet", "low-speed jet", "fuel metering for idle"),
        new("inlet manifold", "intake manifold", "passage to the engine"),
        new("inlet valve", "intake valve", "lets the mixture into the cylinder"),
        new("job card", "work order", "record of the job"),
        new("petrol", "gasoline", "fuel") { HasPlural = false },
        new("pinking", "pinging", "knock") { HasPlural = false },
        new("ram pipe", "velocity stack", "intake horn"),
        new("rev counter", "tachometer", "speed gauge"),
        new("running-on", "dieseling", "firing after switch-off") { HasPlural = false },
        new("sender", "sending unit", "sensor of the fuel level"),
        new("servo", "brake booster", "vacuum brake assist"),
        new("silencer", "muffler", "exhaust box"),
        new("slow running", "idle", "closed-throttle speed") { HasPlural = false },
        new("slow-running jet", "low-speed jet", "fuel metering for idle"),
        new("spanner", "wrench", "tool"),
        new("spindle", "shaft", "throttle shaft"),
        new("spit-back", "lean sneeze", "flame back through the carburettor"),
        new("split pin", "cotter pin", "locking pin"),
        new("strangler", "choke", "cold enrichment"),
        new("tank unit", "sending unit", "sensor of the fuel level"),
        new("throttle plate", "throttle blade", "disc controlling air"),
        new("tickover", "idle", "closed-throttle speed") { HasPlural = false },
        new("to balance", "to synchronize", "to make all barrels pass equal air") { HasPlural = false },
        new("trumpet", "velocity stack", "intake horn"),
        new("twin-barrel", "two-barrel", "with two bores"),
        new("twin-choke", "two-barrel", "with two bores"),
        new("worm-drive clip", "hose clamp", "hose fastening"),
        new("aluminium", "aluminum", "") { HasPlural = false },
        new("calliper", "caliper", ""),
        new("centre", "center", ""),
        new("colour", "color", ""),
        new("downdraught", "downdraft", ""),
        new("grey", "gray", "") { HasPlural = false },
        new("litre", "liter", ""),
        new("metre", "meter", ""),
        new("sidedraught", "sidedraft", ""),
        new("updraught", "updraft", ""),
        new("vapour", "vapor", ""),
    ];

    private static readonly Dictionary<string, string> American = Forms().ToDictionary(f => f.British, f => f.American, StringComparer.OrdinalIgnoreCase);

    // Longest first, so that "auxiliary venturi" is found before anything within it; one pass, so that no word is put over twice.
    private static readonly Regex Words = new(
        $"(?<![A-Za-z])({string.Join('|', American.Keys.OrderByDescending(w => w.Length).Select(Regex.Escape))})(?![A-Za-z])",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        TimeSpan.FromSeconds(1));

    /// <summary>A British text in the words wanted.</summary>
    /// <param name="british">The product's own text.</param>
    /// <param name="words">British or American.</param>
    /// <returns>The text; unchanged for British words.</returns>
    public static string In(string british, TradeWords words)
    {
        ArgumentNullException.ThrowIfNull(british);

        // With a capital it is the name of this product, wherever it stands.
        return words == TradeWords.American
            ? Words.Replace(british, m => m.Value is "Tickover" ? m.Value : InCaseOf(m.Value, American[m.Value]))
            : british;
    }

    private static IEnumerable<(string British, string American)> Forms()
    {
        foreach (var phrase in AlikeOnBothSides)
        {
            yield return (phrase, phrase);
        }

        foreach (var pair in Pairs)
        {
            yield return (pair.British, pair.American);
            if (pair.HasPlural)
            {
                yield return (Plural(pair.British), Plural(pair.American));
            }
        }
    }

    private static string Plural(string word) => word switch
    {
        [.. var stem, 'y'] => $"{stem}ies",
        [.., 'c', 'h'] => $"{word}es",
        _ => $"{word}s",
    };

    private static string InCaseOf(string found, string word) => found switch
    {
        _ when found.Length > 1 && found.All(c => !char.IsLower(c)) => word.ToUpper(CultureInfo.InvariantCulture),
        [var first, ..] when char.IsUpper(first) => char.ToUpperInvariant(word[0]) + word[1..],
        _ => word,
    };
}
