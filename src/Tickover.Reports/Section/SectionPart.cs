namespace Tickover.Reports.Section;

/// <summary>A part named on the drawing.</summary>
/// <param name="Key">Key of its figure, such as <c>barrel.mainJet</c>; <c>barrel.emulsionHoles</c> and <c>barrel.progressionHoles</c> stand for the rows.</param>
/// <param name="Number">Its number on the phone's drawing, from 1.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Size">Its size as shown, with the trial's after an arrow.</param>
/// <param name="Selected">Whether it is the one chosen.</param>
public sealed record SectionPart(string Key, int Number, string Name, string Size, bool Selected);
