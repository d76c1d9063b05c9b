using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>The last surveys, by the text of the document, so that a trial finds the air side of the fitted car ready.</summary>
/// <remarks>Safe for several threads; two that ask for the same car wait for one survey.</remarks>
public sealed class SurveyCache
{
    // A survey of eight different barrels holds 3,072 points of some 140 bytes, with the air side some MB; 24 serve
    // a workshop of a dozen cars and the trials of an afternoon.
    private const int Kept = 24;

    private readonly Lock _lock = new();
    private readonly LinkedList<(string Document, Lazy<MixtureSurvey> Survey)> _surveys = [];

    /// <summary>The survey of a car.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The survey, computed where it is not kept.</returns>
    public MixtureSurvey Of(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return Find(car.Document, () => MixtureSurvey.Run(car));
    }

    /// <summary>The survey of a car where it is at hand; a page that only wants a word of it does not wait for one.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The survey, or null while it is computed; the first asking begins that.</returns>
    public MixtureSurvey? AtHand(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var survey = Entry(car.Document, () => MixtureSurvey.Run(car));
        if (survey.IsValueCreated)
        {
            return survey.Value;
        }

        _ = Task.Run(() => Of(car));
        return null;
    }

    /// <summary>The survey of a changed car on the grid of the fitted one.</summary>
    /// <param name="fitted">The car as it is.</param>
    /// <param name="changed">The car as it would be.</param>
    /// <returns>The survey of the changed car.</returns>
    public MixtureSurvey Trial(Car fitted, Car changed)
    {
        ArgumentNullException.ThrowIfNull(fitted);
        ArgumentNullException.ThrowIfNull(changed);

        // The key names both: a trial is on the fitted car's grid, which its own survey need not be.
        return Find(fitted.Document + "\n\0" + changed.Document, () => Of(fitted).Trial(changed));
    }

    private MixtureSurvey Find(string key, Func<MixtureSurvey> compute)
    {
        var survey = Entry(key, compute);
        try
        {
            return survey.Value;
        }
        catch
        {
            Forget(key);
            throw;
        }
    }

    private Lazy<MixtureSurvey> Entry(string key, Func<MixtureSurvey> compute)
    {
        lock (_lock)
        {
            var node = Node(key);
            if (node is null)
            {
                node = new((key, new Lazy<MixtureSurvey>(compute)));
                if (_surveys.Count == Kept)
                {
                    _surveys.RemoveLast();
                }
            }
            else
            {
                _surveys.Remove(node);
            }

            _surveys.AddFirst(node);
            return node.Value.Survey;
        }
    }

    private void Forget(string key)
    {
        lock (_lock)
        {
            if (Node(key) is { } node)
            {
                _surveys.Remove(node);
            }
        }
    }

    private LinkedListNode<(string Document, Lazy<MixtureSurvey> Survey)>? Node(string key)
    {
        for (var node = _surveys.First; node is not null; node = node.Next)
        {
            if (string.Equals(node.Value.Document, key, StringComparison.Ordinal))
            {
                return node;
            }
        }

        return null;
    }
}
