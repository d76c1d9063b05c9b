namespace Tickover.Web.Worksheets;

/// <summary>A sample that can be opened instead of a document of one's own.</summary>
/// <param name="Address">Its page.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Words">What is worth knowing before it is opened; may be empty.</param>
/// <param name="Label">What opening it does, for those who do not see the page.</param>
public sealed record IntakeSample(string Address, string Name, string Words, string Label);
