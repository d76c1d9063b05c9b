using System.Globalization;
using Tickover.Web.Visits;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Balance;

/// <summary>An act on the practice engine as a form asks for it, in the letters the address keeps it by.</summary>
internal static class PracticeAct
{
    /// <summary>The act; null where the form asks for none.</summary>
    public static string? Of(FormFields fields, EnginePlan plan)
    {
        if (fields.Form.ContainsKey("end"))
        {
            return "e";
        }

        if (fields.Form.ContainsKey("held"))
        {
            return Read(fields);
        }

        if (fields.Choice("kind", ScrewTurnKind.Turned) == ScrewTurnKind.LookedAt)
        {
            var key = fields.Text("adjuster");
            return plan.Find(key) is { } seen ? $"{(seen.Kind == AdjusterKind.StopScrew ? "l" : "x")}:{seen.Key}" : null;
        }

        return ActEntry.Of(fields, plan)?.Step switch
        {
            RodsTakenOff => "o",
            RodsPutBack => "i",
            Turned turned when plan.Find(turned.Adjuster) is { } adjuster => string.Create(CultureInfo.InvariantCulture, $"t:{adjuster.Key}:{Math.Round(turned.Turns * adjuster.StepsATurn):0}"),
            CheckedFor check => $"f:{check.Fault.ToString().Replace(' ', '_')}",
            _ => null,
        };
    }

    private static string Read(FormFields fields)
    {
        var held = fields.Whole("held", "Speed") is { } rpm ? rpm.ToString(CultureInfo.InvariantCulture) : "";
        var barrels = string.Join('-', fields.Text("barrels").Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(b => b.All(char.IsAsciiDigit)));
        return (barrels.Length > 0, held.Length > 0) switch
        {
            (true, _) when fields.Form.ContainsKey("gas") => $"g:{barrels}",
            (true, true) => $"b:{barrels}@{held}",
            (true, false) => $"b:{barrels}",
            (false, true) => $"r:{held}",
            _ => "r",
        };
    }
}
