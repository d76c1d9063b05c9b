using System.Globalization;
using Microsoft.AspNetCore.Components;
using Tickover.Reports;
using Tickover.Web.Mixture;

namespace Tickover.Web.Jets;

/// <summary>The section drawing, the part under the hand and the maps before and after.</summary>
public partial class JetsBench
{
    /// <summary>What is on the bench.</summary>
    [Parameter, EditorRequired]
    public Bench Bench { get; set; } = default!;

    private string Page => $"/cars/{Bench.Shelved.Id}/jets";

    private string Heading => $"One barrel in section, throttle at {Shown.Opening(Bench.Query.Throttle!.Value)}";

    private string Milliseconds => (Bench.TrialMilliseconds ?? 0).ToString("0", CultureInfo.InvariantCulture);

    private string PickAddress(string key) => Address(Bench.Query.Pick(key["barrel.".Length..]));

    private string Address(BenchQuery query) => Page + query.ToAddress();
}
