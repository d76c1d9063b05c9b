using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Json;

/// <summary>One step of the working.</summary>
/// <param name="Title">What is worked out.</param>
/// <param name="Formula">The formula in symbols.</param>
/// <param name="NumbersIn">The formula with numbers.</param>
/// <param name="Answer">The answer with its unit.</param>
/// <param name="Equation">Page and number in docs/physics.</param>
/// <param name="Note">Source or reason; may be empty.</param>
/// <param name="Inputs">Figures put in, with where they come from.</param>
internal sealed record ExplainedStep(
    string Title, string Formula, string NumbersIn, string Answer, string Equation, string Note, IReadOnlyList<FigureLine> Inputs)
{
    /// <summary>A step as the JSON shows it.</summary>
    /// <param name="step">The step.</param>
    /// <returns>The line.</returns>
    public static ExplainedStep Of(WorkingStep step) => new(
        step.Title, step.Formula, step.NumbersIn, step.Answer, step.Equation, step.Note, [.. step.Inputs.Select(FigureLine.Of)]);
}
