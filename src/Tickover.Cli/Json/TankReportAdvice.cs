namespace Tickover.Cli.Json;

/// <summary>One piece of advice in a <see cref="TankReport"/> or a <see cref="SenderReport"/>.</summary>
/// <param name="Heading">What it is about.</param>
/// <param name="Words">What to do.</param>
/// <param name="Danger">Whether it can hurt somebody.</param>
internal sealed record TankReportAdvice(string Heading, string Words, bool Danger);
