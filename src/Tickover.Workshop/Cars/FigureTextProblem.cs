namespace Tickover.Workshop.Cars;

/// <summary>Why a text is not read as a quantity.</summary>
/// <param name="Problem">What is wrong, with what was found.</param>
/// <param name="Allowed">The allowed form.</param>
/// <param name="WhatToDo">What to write.</param>
public sealed record FigureTextProblem(string Problem, string Allowed, string WhatToDo);
