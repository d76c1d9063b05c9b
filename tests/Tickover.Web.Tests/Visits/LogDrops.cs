using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.Visits;

/// <summary>Drops logs on a car of the demonstration, and sends forms as a browser without script does.</summary>
internal static class LogDrops
{
    public static async Task<(string Here, Id<Visit> Visit)> BeginAsync(TestApp app, string car = "Larkfield Tern 2800")
    {
        var visit = (await app.Record.OpenVisitsAsync()).First(v => string.Equals(v.Car.Name, car, StringComparison.Ordinal));

        // The demonstration's own run is taken off, so that what is dropped stands alone.
        if (visit.Runs.Count > 0)
        {
            await app.Record.KeepAsync(new Act { Key = Guid.NewGuid(), Words = "the demonstration's run taken off", Items = [.. visit.Runs.Select(r => r with { Removed = true })] });
        }

        return ($"/visits/{visit.Visit.Id}/road-logs", visit.Visit.Id);
    }

    public static Task<HttpResponseMessage> DropAsync(TestApp app, string here, string name, string content) =>
        DropAsync(app, here, name, System.Text.Encoding.UTF8.GetBytes(content));

    public static async Task<HttpResponseMessage> DropAsync(TestApp app, string here, string name, byte[] content)
    {
        var page = await app.PageAsync(here);
        var form = page.Forms.First(f => f.QuerySelector("input[type=file]") is not null);
        using var request = new HttpRequestMessage(HttpMethod.Post, here);
        var fields = new MultipartFormDataContent();
        foreach (var input in form.QuerySelectorAll("input[name]:not([type=file])"))
        {
            fields.Add(new StringContent(input.GetAttribute("value") ?? ""), input.GetAttribute("name")!);
        }

        fields.Add(new ByteArrayContent(content), "file", name);
        request.Content = fields;
        return await app.SendAsync(request);
    }
}
