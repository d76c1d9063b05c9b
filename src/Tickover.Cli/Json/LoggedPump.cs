namespace Tickover.Cli.Json;

/// <summary>What a log says of the accelerator pump.</summary>
/// <param name="Verdict">The verdict of most openings; null where none could be judged or they do not agree.</param>
/// <param name="Words">What they say together.</param>
/// <param name="Advice">What to do, in order.</param>
/// <param name="Shots">The openings.</param>
internal sealed record LoggedPump(string? Verdict, string Words, IReadOnlyList<string> Advice, IReadOnlyList<LoggedShot> Shots);
