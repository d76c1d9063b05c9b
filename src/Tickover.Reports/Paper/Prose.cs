using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper;

/// <summary>Running text. What people typed goes through here and only here, so nothing they type can act as mark-up.</summary>
/// <param name="Runs">Words in order.</param>
internal sealed record Prose(IReadOnlyList<Run> Runs)
{
    internal static readonly Prose Empty = new([]);

    /// <summary>The words without their looks.</summary>
    internal string Text => string.Concat(Runs.Select(r => r.Text));

    internal bool IsEmpty => Runs.All(r => string.IsNullOrWhiteSpace(r.Text));

    internal static Prose Of(string text) => Empty.Then(text);

    internal static Prose Bold(string text) => Empty.ThenBold(text);

    /// <summary>The mark and the word of a severity.</summary>
    internal static Prose Marked(Severity severity, string word) => new([new Run(PaperText.Clean(word)) { Bold = true, Mark = severity }]);

    internal Prose Then(string text) => With(new Run(PaperText.Clean(text)));

    internal Prose ThenBold(string text) => With(new Run(PaperText.Clean(text)) { Bold = true });

    internal Prose ThenItalic(string text) => With(new Run(PaperText.Clean(text)) { Italic = true });

    internal Prose ThenLink(string text, string address) => With(new Run(PaperText.Clean(text)) { Address = address });

    internal Prose Then(Prose more) => new([.. Runs, .. more.Runs]);

    /// <summary>A further sentence, after a space; nothing where it is empty.</summary>
    internal Prose Sentence(string text) => text.Trim().Length == 0 ? this : Then(IsEmpty ? PaperText.Sentence(text) : " " + PaperText.Sentence(text));

    private Prose With(Run run) => run.Text.Length == 0 && run.Mark is null ? this : new Prose([.. Runs, run]);
}
