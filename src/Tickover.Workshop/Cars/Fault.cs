namespace Tickover.Workshop.Cars;

/// <summary>One thing wrong with a document: where, what, what is allowed and the way out.</summary>
/// <param name="Path">Path in the document, such as <c>carburettors[1].barrels[0].choke</c>.</param>
/// <param name="Problem">What is wrong, with what was found.</param>
/// <param name="Allowed">The allowed range or form.</param>
/// <param name="WhatToDo">What to do about it.</param>
public sealed record Fault(string Path, string Problem, string Allowed, string WhatToDo);
