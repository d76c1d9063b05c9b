namespace Tickover.Workshop.StripDown.Jets;

/// <summary>A sheet of jets as it is written.</summary>
internal sealed record WrittenJets(
    string? Format, string? Name, string? Liquid, double? Temperature, double? Head, double? HeadAtEnd, double? Length, double? Volume, string? Numbering, double? StampHead, IReadOnlyList<WrittenJet?>? Jets);
