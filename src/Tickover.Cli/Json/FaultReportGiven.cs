namespace Tickover.Cli.Json;

/// <summary>An answer that was given; certainty is Sure, Leaning or Unsure.</summary>
internal sealed record FaultReportGiven(string Test, string Answer, string Certainty);
