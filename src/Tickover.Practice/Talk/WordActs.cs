using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Talk;

/// <summary>Reads one act as a person says it: "turn stop 2 out 1/8".</summary>
internal static class WordActs
{
    private static readonly Dictionary<string, double> Parts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["turn"] = 1,
        ["turns"] = 1,
        ["half"] = 0.5,
        ["quarter"] = 0.25,
        ["quarters"] = 0.25,
        ["eighth"] = 0.125,
        ["eighths"] = 0.125,
        ["flat"] = 1.0 / 6,
        ["flats"] = 1.0 / 6,
    };

    /// <summary>What can be said.</summary>
    public static IReadOnlyList<string> Help { get; } =
    [
        "read idle            a round at idle; read 1500 holds a speed; add vacuum, lambda, header or all",
        "read barrel 3        one barrel, or some: read barrel 3 4 at 1500",
        "turn stop 2 in 1/8   something turned: 1/8, 3/8, half, 2 eighths, 2 flats; list shows what there is",
        "rods off, rods on    all rods (or the clamp) off, or back as they are",
        "offer rod 2          how much a rod is too long or short; offer bankrod, offer clamp",
        "look stop 2          whether a stop touches",
        "name leak barrel 3   a fault named and mended: plate, twisted, held, rod, lever, leak, seal, weak, timing, worn, dead",
        "advice               what to do next by what was read and turned so far",
        "list, help, finish",
    ];

    /// <summary>Reads a line; whatever it holds, the answer is an act or a complaint.</summary>
    public static Asked Read(string line)
    {
        const int MostWords = 12;
        var words = line.Split([' ', '\t', ','], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is 0 or > MostWords)
        {
            return Asked.No("Say one thing at a time; help shows what.");
        }

        var rest = words[1..];
        return words[0].ToUpperInvariant() switch
        {
            "READ" => Reading(rest),
            "TURN" => Turning(rest),
            "RODS" when rest is ["off"] => Asked.For(e => e.RodsOff()),
            "RODS" when rest is ["on"] => Asked.For(e => e.RodsOn()),
            "OFFER" when KeyWords.Read(rest) is { Length: > 0 } key => Asked.For(e => e.OfferRod(key)),
            "LOOK" when KeyWords.Read(rest) is { Length: > 0 } key => Asked.For(e => e.LookAtStop(key)),
            "NAME" => Asked.For(e => FaultNames.Read(string.Join(' ', rest), e.Plan) is { } place ? e.Repair(place) : PracticeAnswer.No(FaultNames.Complaint)),
            "FINISH" when rest.Length == 0 => Asked.For(e => e.Finish()),
            _ => Asked.No($"'{Cut(line)}' is nothing that can be done here; help shows what."),
        };
    }

    private static Asked Reading(string[] words)
    {
        const string How = "read idle, read 1500, read barrel 3, read barrel 3 4 at 1500; add vacuum, lambda, header or all.";
        if (words is ["barrel" or "barrels", .. var rest])
        {
            var barrels = rest.TakeWhile(w => int.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out _)).Select(w => int.Parse(w, CultureInfo.InvariantCulture)).ToList();
            var after = rest[barrels.Count..];
            var held = after is ["at", var speed, ..] ? Number(speed) : null;
            var kinds = ReadWords.Kinds(after is ["at", _, .. var more] ? more : after);
            return kinds is { } what && barrels.Count > 0 && !(after is ["at", ..] && held is null) ? Asked.For(e => e.ReadBarrels(barrels, held, what)) : Asked.No(How);
        }

        if (words.Length == 0 || ReadWords.Kinds(words[1..]) is not { } asked)
        {
            return Asked.No(How);
        }

        return string.Equals(words[0], "idle", StringComparison.OrdinalIgnoreCase) ? Asked.For(e => e.ReadRound(null, asked))
            : Number(words[0]) is { } rpm ? Asked.For(e => e.ReadRound(rpm, asked))
            : Asked.No(How);
    }

    // the way is said in the adjuster's own words, so it can be told only with the engine at hand
    private static Asked Turning(string[] words)
    {
        var numbered = words.Length > 1 && words[1].All(char.IsAsciiDigit);
        var key = words.Length == 0 ? "" : KeyWords.Read(words[..(numbered ? 2 : 1)]);
        var rest = words[Math.Min(numbered ? 2 : 1, words.Length)..];
        return Asked.For(e => e.Plan.Find(key) is { } adjuster ? Turned(e, adjuster, rest) : PracticeAnswer.No($"There is no '{Cut(key)}' on this engine; list shows what there is."));
    }

    private static PracticeAnswer Turned(PracticeEngine engine, Adjuster adjuster, string[] words)
    {
        var way = words.Length == 0 ? 0
            : string.Equals(words[0], adjuster.More, StringComparison.OrdinalIgnoreCase) ? 1
            : string.Equals(words[0], adjuster.Less, StringComparison.OrdinalIgnoreCase) ? -1
            : 0;
        return way != 0 && Amount(words[1..]) is { } turns
            ? engine.Turn(adjuster.Key, way * turns)
            : PracticeAnswer.No($"Say which way and how far: turn {adjuster.Key.Replace(':', ' ')} {adjuster.More} {(adjuster.StepsATurn % 6 == 0 ? "1 flat" : "1/8")}; {adjuster.More} or {adjuster.Less}.");
    }

    private static double? Amount(string[] words)
    {
        double? sum = null;
        double? pending = null;
        foreach (var word in words)
        {
            if (Parts.TryGetValue(word, out var part))
            {
                sum = (sum ?? 0) + ((pending ?? 1) * part);
                pending = null;
            }
            else if (Number(word) is { } number)
            {
                sum = pending is null ? sum : (sum ?? 0) + pending;
                pending = number;
            }
            else
            {
                return null;
            }
        }

        return pending is null ? sum : (sum ?? 0) + pending;
    }

    private static double? Number(string word)
    {
        var parts = word.Split('/');
        return double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var over)
            ? parts.Length == 1 ? over
            : parts.Length == 2 && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var under) && under > 0 ? over / under
            : null
            : null;
    }

    private static string Cut(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
