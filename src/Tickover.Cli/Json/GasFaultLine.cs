using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Json;

/// <summary>Something wrong with a gas reading.</summary>
/// <param name="Kind">What.</param>
/// <param name="Words">What the gases show.</param>
/// <param name="WhatToDo">What to look at or read next.</param>
internal sealed record GasFaultLine(GasFaultKind Kind, string Words, string WhatToDo);
