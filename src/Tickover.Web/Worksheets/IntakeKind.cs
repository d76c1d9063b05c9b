using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>A kind of document that is taken into the hand.</summary>
/// <param name="format">What the document's format says.</param>
/// <param name="samples">The samples, opened from a visit or from none.</param>
/// <param name="take">Takes a document in: its page, or what is wrong with it.</param>
public sealed class IntakeKind(
    string format, Func<Id<Visit>?, IReadOnlyList<IntakeSample>> samples, Func<string, Id<Visit>?, (string? Page, IReadOnlyList<Fault> Faults)> take)
{
    /// <summary>What the document's format says.</summary>
    public string Format => format;

    /// <summary>Makes the kind of a shelf.</summary>
    /// <typeparam name="T">What a document says, worked out.</typeparam>
    /// <param name="format">What the document's format says.</param>
    /// <param name="shelf">The shelf.</param>
    /// <param name="pages">Address under which its pages stand, such as "/gauges".</param>
    /// <param name="words">Name of a sample, what is worth knowing of it, and what it is if the page holds several kinds, such as "survey of ".</param>
    /// <returns>The kind.</returns>
    public static IntakeKind Of<T>(string format, DocumentShelf<T> shelf, string pages, Func<T, (string Name, string Words, string What)> words)
        where T : class
    {
        IntakeSample Sample(string id, T said, Id<Visit>? visit)
        {
            var (name, told, what) = words(said);
            return new IntakeSample(IntakeAddress.Of($"{pages}/{id}", visit), name, told, $"Open {what}{name}");
        }

        (string?, IReadOnlyList<Fault>) Take(string text, Id<Visit>? visit)
        {
            var taken = shelf.Take(text);
            return (taken.Said is null ? null : IntakeAddress.Of($"{pages}/{taken.Id}", visit), taken.Faults);
        }

        return new IntakeKind(format, visit => [.. shelf.Samples.Select(sample => Sample(sample.Key, sample.Value, visit))], Take);
    }

    /// <summary>The samples.</summary>
    /// <param name="visit">The visit they are opened from; null for none.</param>
    /// <returns>The samples.</returns>
    public IReadOnlyList<IntakeSample> Samples(Id<Visit>? visit) => samples(visit);

    /// <summary>Takes a document in.</summary>
    /// <param name="document">Its text.</param>
    /// <param name="visit">The visit it comes from; null for none.</param>
    /// <returns>Its page, or what is wrong with it.</returns>
    public (string? Page, IReadOnlyList<Fault> Faults) Take(string document, Id<Visit>? visit) => take(document, visit);
}
