namespace Tickover.Cli.Json;

/// <summary>One finding in a <see cref="SupplyReport"/>.</summary>
/// <param name="Heading">What was looked at.</param>
/// <param name="Standing">Enough, Close, Short or Unknown.</param>
/// <param name="Margin">The margin with its unit.</param>
/// <param name="Words">What is so.</param>
/// <param name="Next">What to look at; empty where nothing is called for.</param>
internal sealed record SupplyReportFinding(string Heading, string Standing, string Margin, string Words, string Next);
