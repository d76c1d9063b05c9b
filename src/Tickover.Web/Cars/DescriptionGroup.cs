namespace Tickover.Web.Cars;

/// <summary>Fields of one part of the car.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Fields">Its fields.</param>
/// <param name="Open">Whether the group is open: something in it is faulty, or was typed and is not kept yet.</param>
public sealed record DescriptionGroup(string Part, IReadOnlyList<DescriptionField> Fields, bool Open)
{
    /// <summary>The figures that the document gives, and how many stand by default.</summary>
    public string Summary
    {
        get
        {
            var given = Fields.Where(f => f.Default is null).Select(f => $"{f.Label} {f.Text}").ToList();
            var rest = Fields.Count - given.Count;
            return string.Join(", ", rest == 0 ? given : [.. given, $"{rest} by default"]);
        }
    }
}
