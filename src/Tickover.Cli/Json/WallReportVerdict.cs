namespace Tickover.Cli.Json;

/// <summary>What to do, in a <see cref="WallReport"/>.</summary>
/// <param name="Kind">SurveyAgain, ReadMore, Specialist or Replace.</param>
/// <param name="IsNo">Whether the tank must not go on as it is.</param>
/// <param name="Heading">In a line.</param>
/// <param name="Why">Why.</param>
/// <param name="PatchRefused">Whether a patch over one place is refused.</param>
/// <param name="AgainInYears">Years to the next survey, or null.</param>
/// <param name="AgainOn">Its day, or null.</param>
/// <param name="ReadNext">Cells to read next.</param>
internal sealed record WallReportVerdict(string Kind, bool IsNo, string Heading, string Why, bool PatchRefused, double? AgainInYears, string? AgainOn, IReadOnlyList<string> ReadNext);
