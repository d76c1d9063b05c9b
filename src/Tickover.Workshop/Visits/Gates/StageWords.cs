namespace Tickover.Workshop.Visits.Gates;

/// <summary>Stages and gates as they are said.</summary>
public static class StageWords
{
    /// <summary>A stage, such as "Strip-down".</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>Its name.</returns>
    public static string Words(this Stage stage) => stage switch
    {
        Stage.StripDown => "Strip-down",
        Stage.HandOver => "Hand-over",
        _ => stage.ToString(),
    };
}
