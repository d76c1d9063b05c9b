using Tickover.Workshop.Cars;

namespace Tickover.Web.Worksheets;

/// <summary>A document as a form brings it: a file, or else the text pasted.</summary>
/// <param name="Name">Name of the file; empty where it was pasted.</param>
/// <param name="Text">The text.</param>
/// <param name="Faults">Why there is none; empty where there is.</param>
internal sealed record DroppedDocument(string Name, string Text, IReadOnlyList<Fault> Faults)
{
    private const int LargestBytes = 1 << 20;
    private const int LongestName = 80;

    /// <summary>Reads the fields <c>file</c> and <c>document</c>.</summary>
    /// <param name="form">The form.</param>
    /// <returns>The document.</returns>
    public static async Task<DroppedDocument> ReadAsync(IFormCollection form)
    {
        var pasted = form["document"].ToString();
        if (form.Files["file"] is not { Length: > 0 } file)
        {
            return new DroppedDocument("", pasted, pasted.Trim().Length > 0 ? [] : [new Fault("", "Nothing was chosen", "a file, or its text pasted", "Choose a file, paste a document or take a sample first.")]);
        }

        if (file.Length > LargestBytes)
        {
            return new DroppedDocument("", pasted, [new Fault("", "The file is larger than 1 MB", "a document of some kB", "Choose the document itself, not a picture, a log or a mesh.")]);
        }

        using var reader = new StreamReader(file.OpenReadStream());
        var name = Path.GetFileName(file.FileName);
        return new DroppedDocument(name.Length <= LongestName ? name : name[..LongestName], await reader.ReadToEndAsync(), []);
    }
}
