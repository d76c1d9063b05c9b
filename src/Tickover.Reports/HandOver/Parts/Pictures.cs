using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>Photographs of the record with their captions; notes of arrows are told in words as well.</summary>
internal static class Pictures
{
    internal static Photo Of(Telling t, Photograph photograph, Finding? finding)
    {
        var caption = finding is null ? Prose.Empty : Prose.Bold(SeverityMark.Word(finding.Severity)).Then($": {finding.What}.");
        caption = photograph.Caption.Trim().Length > 0 ? caption.Sentence(photograph.Caption) : caption;
        var notes = photograph.Marks.Select(m => m.Note.Trim()).Where(n => n.Length > 0).ToList();
        caption = notes.Count > 0 ? caption.Then($"{(caption.IsEmpty ? "" : " ")}{t.Say("Arrow")}: {string.Join("; ", notes)}.") : caption;
        return new Photo(t.Settings.Picture(photograph.Id), caption.IsEmpty ? t.Prose("No caption was noted.") : caption, photograph.Marks);
    }
}
