using System.Globalization;

namespace Tickover.Reports.Tanks;

/// <summary>The picture of tanks in words.</summary>
public static class TankSentence
{
    /// <summary>Says how much there is, where, and whether the pick-up is covered.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>A few short sentences.</returns>
    public static string Of(TankView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var moment = view.Moment;
        var tanks = view.Analysis.Set.Tanks;
        var shares = tanks.Count > 1 ? $": {string.Join(", ", tanks.Select((t, i) => Line($"{t.Name} {moment.Shares[i]:0.0} l")))}" : string.Empty;
        return Line($"{moment.Litres:0.#} l in all{shares}. {Stand(view)} The stick in the {tanks[moment.Stick].Name} tank is wet to {moment.DipMillimetres:0} mm.") + PickUp(view) + Reach(view);
    }

    private static string Stand(TankView view) => (view.NoseUp, view.LeftUp) switch
    {
        (0, 0) => "The car stands level.",
        (var nose, 0) => Line($"The nose is {Way(nose)}."),
        (0, var left) => Line($"The left side is {Way(left)}."),
        var (nose, left) => Line($"The nose is {Way(nose)}, the left side {Way(left)}."),
    };

    private static string Way(double percent) => Line($"{(percent < 0 ? "down" : "up")} {Math.Abs(percent):0} %");

    private static string PickUp(TankView view)
    {
        var covers = view.Moment.CoverMillimetres.OfType<double>().ToArray();
        return view.Moment.IsFed switch
        {
            null => string.Empty,
            true => Line($" The pick-up is {covers.Max():0} mm under."),
            _ => " The pick-up draws air.",
        };
    }

    private static string Reach(TankView view) => view.Reach is null ? string.Empty : Line($" Below the dashed line {view.Analysis.UnusableLitres:0.0} l stay in, out of the pick-up's reach.");

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
