namespace Tickover.Web.Api;

/// <summary>One line of a working as programs see it.</summary>
/// <param name="Title">What is worked out.</param>
/// <param name="Formula">The formula in symbols.</param>
/// <param name="NumbersIn">The formula with the numbers in.</param>
/// <param name="Answer">The answer with its unit.</param>
/// <param name="Equation">Page and number of the equation.</param>
/// <param name="Note">Source or reason; may be empty.</param>
/// <param name="Inputs">Inputs with their origin.</param>
public sealed record StepAnswer(
    string Title, string Formula, string NumbersIn, string Answer, string Equation, string Note, IReadOnlyList<string> Inputs);
