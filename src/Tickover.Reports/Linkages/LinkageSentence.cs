using System.Globalization;

namespace Tickover.Reports.Linkages;

/// <summary>The sentence that stands for the picture of a linkage.</summary>
internal static class LinkageSentence
{
    internal static string Of(LinkageView view)
    {
        var (a, worst) = (view.Analysis, view.Setting is LinkageSetting.AsFound ? view.Analysis.Worst : view.Analysis.Equalised.Worst);
        var moment = Workshop.Linkages.LinkageAnalyst.At(view.Linkage, view.Down, a.Limits).Moment;
        var plates = string.Join(", ", a.Names.Select((n, i) => string.Create(CultureInfo.InvariantCulture, $"{n} {moment.Plates[i].Degrees:0.0}°")));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{a.Linkage.Name}{(view.Setting is LinkageSetting.AsAdvised ? ", set as advised" : "")}, from above with the pedal {view.Down * 100:0} % down: {plates}. Over the travel no carburettor's air is further than {worst.Idle * 100:0} % from the mean at idle and {worst.OffIdle * 100:0} % off idle.");
    }
}
