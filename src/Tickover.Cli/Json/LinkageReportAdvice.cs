namespace Tickover.Cli.Json;

/// <summary>One piece of advice in a <see cref="LinkageReport"/>.</summary>
/// <param name="Heading">What it is about.</param>
/// <param name="Words">The advice.</param>
/// <param name="Danger">Whether it can hurt somebody.</param>
internal sealed record LinkageReportAdvice(string Heading, string Words, bool Danger);
