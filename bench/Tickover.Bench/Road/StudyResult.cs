namespace Tickover.Bench.Road;

/// <summary>What a study found of one car.</summary>
/// <param name="Of">Which study: seed, cars and ways of working.</param>
/// <param name="Number">The car's number.</param>
/// <param name="Best">What the best set sold would have, on the truth.</param>
/// <param name="Ways">What became of it, by the way of working.</param>
internal sealed record StudyResult(string Of, int Number, double Best, IReadOnlyDictionary<string, RoadCase> Ways);
