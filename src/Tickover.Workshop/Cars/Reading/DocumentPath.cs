using System.Globalization;
using System.Text.RegularExpressions;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>A place in a document: names and places in lists.</summary>
/// <param name="Steps">The steps from the document down; a step is a name, or an index where the name is null.</param>
internal sealed partial record DocumentPath(IReadOnlyList<(string? Name, int Index)> Steps)
{
    private const int LongestText = 200;

    /// <summary>The last name.</summary>
    public string Name => Steps[^1].Name!;

    /// <summary>The path of the object it stands in; for a member of the document, the document itself.</summary>
    public DocumentPath Above => new([.. Steps.SkipLast(1)]);

    /// <summary>Reads a path such as <c>carburettors[0].barrels[1].mainJet</c>.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The path, or null where it is none.</returns>
    public static DocumentPath? Parse(string text)
    {
        if (text.Length > LongestText || !WholePath().IsMatch(text))
        {
            return null;
        }

        return new DocumentPath([.. OneStep().Matches(text).Select(m => m.Groups["index"].Success
            ? ((string?)null, int.Parse(m.Groups["index"].ValueSpan, CultureInfo.InvariantCulture))
            : (m.Groups["name"].Value, 0))]);
    }

    /// <summary>A path of names only.</summary>
    /// <param name="names">The names.</param>
    /// <returns>The path.</returns>
    public static DocumentPath Of(params IEnumerable<string> names) => new([.. names.Select(n => ((string?)n, 0))]);

    /// <summary>A path one name further down.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The path.</returns>
    public DocumentPath Then(string name) => new([.. Steps, (name, 0)]);

    /// <summary>A path one place in a list further down.</summary>
    /// <param name="index">Index from 0.</param>
    /// <returns>The path.</returns>
    public DocumentPath At(int index) => new([.. Steps, (null, index)]);

    /// <summary>What stands at the path.</summary>
    /// <param name="root">The document.</param>
    /// <returns>The value, or null.</returns>
    public SourceNode? In(SourceNode root) => Steps.Aggregate((SourceNode?)root, Below);

    /// <summary>What stands at the path, or at the longest part of it that is there.</summary>
    /// <param name="root">The document.</param>
    /// <returns>The value.</returns>
    public SourceNode NearestIn(SourceNode root) => Steps.Aggregate(root, (node, step) => Below(node, step) ?? node);

    private static SourceNode? Below(SourceNode? node, (string? Name, int Index) step) =>
        step.Name is null ? node?.Items.ElementAtOrDefault(step.Index) : node?[step.Name];

    [GeneratedRegex(@"^[A-Za-z]+(\[[0-9]{1,2}\])?(\.[A-Za-z]+(\[[0-9]{1,2}\])?)*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex WholePath();

    [GeneratedRegex(@"(?<name>[A-Za-z]+)|\[(?<index>[0-9]{1,2})\]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex OneStep();
}
