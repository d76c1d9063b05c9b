namespace Tickover.Workshop.Visits.Gates;

/// <summary>Turns a wish to sign into an act, or says in plain words why not.</summary>
public static class Signing
{
    /// <summary>The longest text of what was seen or why.</summary>
    public const int LongestWords = 400;

    /// <summary>Signs one check.</summary>
    /// <param name="record">The visit as it stands.</param>
    /// <param name="wish">What is signed.</param>
    /// <returns>The act, or refusals.</returns>
    public static SigningAnswer Sign(VisitRecord record, SignWish wish)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(wish);
        var check = GateCatalogue.Find(wish.Check);
        List<string> refusals = [.. People(record, wish)];
        if (check is null || check.Gate != wish.Gate)
        {
            refusals.Add($"There is no check “{wish.Check}” at this tap. Open the tap again and choose one of its checks.");
        }

        refusals.AddRange(Text(wish.Words, "Write what was seen, in a few words: a signature without it tells nobody anything."));
        if (check?.Key is GateKeys.Leaks or GateKeys.RoadLeaks && FuelLeaks.Standing(record).FirstOrDefault() is { } leak)
        {
            refusals.Add($"The leak check cannot be signed while “{leak.What}” stands as unsafe. Put it right, write so under the finding, then check again.");
        }

        return refusals.Count > 0 ? new SigningAnswer(null, refusals) : Answer(record, wish, $"signed: {check!.Name}", Item(record, wish) with { Check = check.Key, Seen = wish.Words.Trim() });
    }

    /// <summary>Opens a gate without all its checks, for this visit, with a reason and a name.</summary>
    /// <param name="record">The visit as it stands.</param>
    /// <param name="wish">Which gate, who, why; <see cref="SignWish.Check"/> is left empty.</param>
    /// <returns>The act, or refusals.</returns>
    public static SigningAnswer Override(VisitRecord record, SignWish wish)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(wish);
        List<string> refusals = [.. People(record, wish)];
        if (!Enum.IsDefined(wish.Gate))
        {
            refusals.Add("There is no such tap. Open the visit again and choose one of the four.");
        }

        refusals.AddRange(Text(wish.Words, "Write why the tap is opened without its checks: the reason and your name stand on the account."));
        if (refusals.Count > 0)
        {
            return new SigningAnswer(null, refusals);
        }

        var leaks = string.Concat(FuelLeaks.Standing(record).Select(f => $"; unsafe and not put right: {f.What}"));
        return Answer(record, wish, $"overridden: {GateCatalogue.Of(wish.Gate).Name}{leaks}", Item(record, wish) with { Override = wish.Words.Trim(), Seen = leaks.TrimStart(';', ' ') });
    }

    private static IEnumerable<string> People(VisitRecord record, SignWish wish)
    {
        if (!record.Workshop.People.Any(p => p.Id == wish.Person && !p.Removed))
        {
            yield return "Say who signs: that person is not among the people of this workshop.";
        }
    }

    private static IEnumerable<string> Text(string words, string whenEmpty)
    {
        if (string.IsNullOrWhiteSpace(words))
        {
            yield return whenEmpty;
        }
        else if (words.Trim().Length > LongestWords)
        {
            yield return $"Say it in at most {LongestWords} characters; more of it can go into a note.";
        }
    }

    // The item's number is the act's key, so that a wish sent twice is one item even where the key got lost on the way.
    private static SignOff Item(VisitRecord record, SignWish wish) => new()
    {
        Id = new Id<SignOff>(wish.Key),
        Visit = record.Visit.Id,
        Gate = wish.Gate,
        Person = wish.Person,
        On = wish.On,
    };

    private static SigningAnswer Answer(VisitRecord record, SignWish wish, string words, SignOff item) => new(
        new Act { Key = wish.Key, Items = [item], Words = words, Visit = record.Visit.Id, Person = wish.Person, Device = wish.Device }, []);
}
