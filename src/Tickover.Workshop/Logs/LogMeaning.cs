namespace Tickover.Workshop.Logs;

/// <summary>Something a column of a log can be taken for.</summary>
/// <param name="Code">As the command line writes it: "rpm", "lambda@2", "ignored".</param>
/// <param name="Words">In the trade's words.</param>
/// <param name="Units">Units it comes in; none where there is nothing to choose.</param>
public sealed record LogMeaning(string Code, string Words, IReadOnlyList<string> Units);
