using System.Globalization;
using System.Text;
using Tickover.Cli.Input;
using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Output;

/// <summary>Gas readings as a person reads them: what is wrong with the sample first, then what it says.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class GasText(int width)
{
    private const double Percent = 100;
    private const int MostRows = 500; // nobody reads more, and laying out a hundred thousand takes twenty seconds
    private const string Indent = "  ";

    /// <summary>One reading.</summary>
    /// <param name="account">What it says.</param>
    /// <returns>The text.</returns>
    public string Text(GasAccount account)
    {
        var text = new StringBuilder();
        WrappedText.Append(text, width, string.Empty, Verdict(account));
        foreach (var fault in account.Faults)
        {
            WrappedText.Append(text, width, Indent, fault.Words);
            WrappedText.Append(text, width, Indent + Indent, fault.WhatToDo);
        }

        text.Append(TextTable.Text(width, ["Cross-check", "Here\t", "Expected\t", "of"], Checks(account)));
        WrappedText.Append(text, width, string.Empty, GasWords.Caution);
        return text.ToString();
    }

    /// <summary>Many readings.</summary>
    /// <param name="read">What the table held.</param>
    /// <param name="accounts">What each reading says, in order.</param>
    /// <returns>The text.</returns>
    public string Text(GasTableRead read, IReadOnlyList<GasAccount> accounts)
    {
        var text = new StringBuilder(TextTable.Text(
            width,
            ["Line\t", "rpm\t", "CO %\t", "HC ppm\t", "CO₂ %\t", "O₂ %\t", "λ\t", "±\t", "Worth", "What is wrong"],
            accounts.Zip(read.Readings, Row).Take(MostRows)));
        if (accounts.Count > MostRows)
        {
            text.AppendLine(Say($"The first {MostRows} of {accounts.Count} readings; --csv and --json hold them all. All are counted:"));
        }

        text.AppendLine(string.Join(
            ", ",
            Enum.GetValues<GasStanding>().Select(standing => $"{accounts.Count(a => a.Standing == standing)} {GasWords.Of(standing)}")
                .Append($"{read.Refused.Count(row => row.IsReading)} kept out")) + ".");
        foreach (var fault in accounts.SelectMany(a => a.Faults).DistinctBy(fault => fault.Kind).OrderByDescending(fault => fault.Leaves).ThenBy(fault => fault.Kind))
        {
            WrappedText.Append(text, width, Indent, $"{GasWords.Of(fault.Kind)}: {fault.WhatToDo}");
        }

        WrappedText.Append(text, width, string.Empty, GasWords.Caution);
        return text.ToString();
    }

    private static string Verdict(GasAccount account)
    {
        var lambda = Say($"λ {account.Lambda:0.000}{WrappedText.Whole(" ±")}{account.LambdaBand:0.000}");
        var side = account.Lambda < 1 ? "rich" : "lean";
        var mixture = WrappedText.Whole(Say($"{Math.Abs(account.Lambda - 1) * Percent:0.0} % {side}"));
        return account.Standing switch
        {
            GasStanding.Good => Say($"{lambda}: {mixture}, air to fuel {account.AirFuelRatio:0.0} with {account.FuelName}."),
            GasStanding.Doubtful => $"{lambda}: {mixture}, if the sample is good. Settle this first:",
            _ => $"{lambda} is what the gases make, and says nothing of the mixture. Change no jet on it:",
        };
    }

    private static IEnumerable<IReadOnlyList<string>> Checks(GasAccount account)
    {
        var r = account.Reading;
        var other = account.Constants == FuelConstants.Fuel ? account.LambdaOfRegulation : account.LambdaOfFuel;
        var whose = account.Constants == FuelConstants.Fuel ? "the regulation's fuel" : account.FuelName;
        var (shown, lambda) = (r.LambdaShown, Say($"{account.Lambda:0.000}"));
        yield return [$"λ with the constants of {whose}", Say($"{other:0.000}"), lambda, "the formula"];
        yield return ["λ by Spindt's balance", Say($"{account.SpindtLambda:0.000}"), lambda, "the formula"];
        if (shown is not null)
        {
            yield return ["λ on the instrument", Say($"{shown:0.0##}"), Say($"{account.LambdaOfRegulation:0.000}"), "its gases"];
        }

        yield return ["CO", Say($"{r.CarbonMonoxidePercent:0.0#} %"), Say($"{account.ExpectedMonoxidePercent:0.0} %"), "this λ; real engines leave 0.1 to 0.5"];
        yield return ["CO + CO₂", Say($"{r.CarbonSumPercent:0.0} %"), Say($"{account.ExpectedCarbonSumPercent:0.0} %"), "this CO to CO₂ without air"];
        yield return ["All gases with nitrogen", Say($"{account.DryTotalPercent:0.0} %"), "100 %", "gases that belong together"];
        if (account.UndilutedLambda is { } undiluted)
        {
            yield return ["λ by CO to CO₂ alone", Say($"{undiluted:0.000}"), lambda, "the formula; no leak changes it"];
        }
    }

    private static IReadOnlyList<string> Row(GasAccount account, GasRow row)
    {
        var r = account.Reading;
        return
        [
            Say($"{row.Line}"), Say($"{r.SpeedRpm:0}"), Say($"{r.CarbonMonoxidePercent:0.00}"), Say($"{r.HydrocarbonsPpm:0}"),
            Say($"{r.CarbonDioxidePercent:0.0}"), Say($"{r.OxygenPercent:0.00}"), Say($"{account.Lambda:0.000}"), Say($"{account.LambdaBand:0.000}"),
            GasWords.Of(account.Standing), string.Join("; ", account.Faults.Select(fault => GasWords.Of(fault.Kind))),
        ];
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
