namespace Tickover.Web.Cars;

/// <summary>Fields of one part of the car.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Fields">Its fields.</param>
/// <param name="Open">Whether the group is open: something in it is given or faulty.</param>
public sealed record DescriptionGroup(string Part, IReadOnlyList<DescriptionField> Fields, bool Open)
{
    /// <summary>How many figures of the group the document gives, in words.</summary>
    public string Summary
    {
        get
        {
            var given = Fields.Count(f => f.Default is null);
            return given == 0 ? $"{Fields.Count} by default" : $"{given} of {Fields.Count} given";
        }
    }
}
