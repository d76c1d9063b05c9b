using Tickover.Physics.Leaks;

namespace Tickover.Workshop.Leaks.Working;

/// <summary>Says what a leak test comes to.</summary>
internal static class LeakJudge
{
    public static LeakVerdict Of(LeakSheet sheet, LeakRate rate, PanelFinding panel, double? limit, double? seconds)
    {
        var verdict = Plain(sheet, rate, limit, seconds);
        return panel.IsOver
            ? verdict with
            {
                IsNo = true,
                Why = verdict.Why + $" The test used {LeakFigures.Pressure(panel.UsedPascals, sheet.Unit)}; {LeakFigures.Pressure(panel.GentlePascals, sheet.Unit)} is the most {(panel.IsMeasured ? "the largest flat panel should bear" : "for a tank whose panels were not measured")}. Let the air out, look for a dent that stayed, and test again with less.",
            }
            : verdict;
    }

    private static LeakVerdict Plain(LeakSheet sheet, LeakRate rate, double? limit, double? seconds)
    {
        var smallest = LeakFigures.Leak(rate.SmallestSeen);
        if (rate.IsGain)
        {
            return new LeakVerdict(
                LeakVerdictKind.Gained,
                "No answer: the tank gained gas",
                $"At one temperature the pressure rose by {LeakFigures.Pressure(-rate.PascalCubicMetresPerSecond * sheet.Minutes * 60 / (sheet.Litres / 1000), sheet.Unit)}, more than the instruments explain. It is still warming, fuel is boiling off in it, the supply is not shut, or a reading is wrong. Wait half an hour and begin again.",
                IsNo: true);
        }

        if (rate.IsSeen)
        {
            return new LeakVerdict(
                LeakVerdictKind.Leaks,
                $"It leaks: {LeakFigures.Leak(rate.PascalCubicMetresPerSecond)}",
                $"Nine times in ten between {LeakFigures.Leak(Math.Max(0, rate.Low))} and {LeakFigures.Leak(rate.High)}; the smallest leak this test could have seen is {smallest}. Find it with soapy water, or with water and dye; look at the plugs and hoses of the test itself first.",
                IsNo: true);
        }

        return limit < rate.SmallestSeen
            ? new LeakVerdict(
                LeakVerdictKind.CannotTell,
                $"No leak seen, but one of {LeakFigures.Leak(limit.Value)} might have been missed",
                $"The smallest leak this test could have been trusted to see is {smallest}. The same readings spread over {LeakFigures.Time(seconds!.Value)} would do for the limit, if the gas is as steady all that time.",
                IsNo: true)
            : new LeakVerdict(
                LeakVerdictKind.NoneSeen,
                $"No leak seen; one of {smallest} would have been",
                "One in twenty such leaks is missed, one test in twenty cries out for nothing. A weep of fuel can be smaller: stand it with water and dye for a day as well.",
                IsNo: false);
    }
}
