namespace Tickover.Web.Worksheets;

/// <summary>Sample documents a worksheet can start from; those with faults are left out. Read once.</summary>
/// <param name="options">Names the folder.</param>
internal sealed class WorksheetSamples(WebAppOptions options)
{
    private readonly Lazy<IReadOnlyList<(string File, string Name, string Text, WorksheetForm Form)>> _all = new(() => Load(options.SamplesFolder));

    /// <summary>The samples of a form.</summary>
    /// <param name="form">The form.</param>
    /// <returns>Name of the file, what it is called, and the document.</returns>
    public IReadOnlyList<(string File, string Name, string Text)> Of(WorksheetForm form) => [.. _all.Value.Where(s => s.Form == form).Select(s => (s.File, s.Name, s.Text))];

    private static IReadOnlyList<(string File, string Name, string Text, WorksheetForm Form)> Load(string? folder) => !Directory.Exists(folder)
        ? []
        :
        [
            .. from form in WorksheetForms.All
               from path in Directory.EnumerateFiles(folder, "*" + form.SampleEnding).Order(StringComparer.Ordinal)
               let text = File.ReadAllText(path)
               let reading = form.Read(text)
               where reading.Faults.Count == 0
               select (Path.GetFileName(path), reading.Name, text, form),
        ];
}
