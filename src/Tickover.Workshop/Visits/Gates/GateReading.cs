using System.Globalization;

namespace Tickover.Workshop.Visits.Gates;

/// <summary>Works out how one gate stands.</summary>
internal sealed class GateReading(VisitRecord record, GateDefinition definition, DateOnly today)
{
    private readonly IReadOnlyList<Upset> _upsets = Upsets.Of(record);

    private readonly IReadOnlyList<SignOff> _signOffs =
        [.. record.SignOffs.Where(s => s.Gate == definition.Gate && !s.Removed).OrderBy(s => s.Kept)];

    public GateStatus Status()
    {
        IReadOnlyList<CheckStatus> checks = [.. definition.Checks.Select(Check)];
        IReadOnlyList<OverrideStatus> overrides = [.. _signOffs.Where(s => s.Check.Length == 0 && s.Override.Length > 0).Select(s => Override(s, checks))];
        var state = State(checks, overrides);
        return new GateStatus(definition, state, checks, overrides, Sentence(state, checks, overrides));
    }

    private static GateState State(IReadOnlyList<CheckStatus> checks, IReadOnlyList<OverrideStatus> overrides) =>
        checks.All(c => c.State == CheckState.Signed) ? GateState.Open
        : overrides.Any(o => o.Counts) ? GateState.Overridden
        : GateState.Shut;

    private CheckStatus Check(GateCheck check)
    {
        if (_signOffs.LastOrDefault(s => string.Equals(s.Check, check.Key, StringComparison.Ordinal)) is not { } last)
        {
            return new CheckStatus(check, CheckState.Missing, null, "", "", "Not signed.");
        }

        var initials = record.Workshop.InitialsOf(last.Person);
        var signed = $"{last.Seen}. Signed {initials}, {DayText.Of(last.On)}.".Replace("..", ".", StringComparison.Ordinal);
        return Since(last, check.StaleAfter) is { Length: > 0 } stale
            ? new CheckStatus(check, CheckState.Stale, last, initials, stale, $"Counts no longer: {stale} {signed}")
            : new CheckStatus(check, CheckState.Signed, last, initials, "", signed);
    }

    private OverrideStatus Override(SignOff signOff, IReadOnlyList<CheckStatus> checks)
    {
        var initials = record.Workshop.InitialsOf(signOff.Person);
        var stale = Since(signOff, definition.StaleAfter);
        var words = $"Overridden by {initials}, {DayText.Of(signOff.On)}: {signOff.Override.TrimEnd('.')}.";
        return stale.Length > 0
            ? new OverrideStatus(signOff, initials, stale, $"{words} Counts no longer: {stale}")
            : new OverrideStatus(signOff, initials, "", $"{words}{Unchecked(checks)}");
    }

    private string Since(SignOff signOff, Disturbance by)
    {
        if (by.HasFlag(Disturbance.NextDay) && signOff.On != today)
        {
            return $"it holds for one day, and it is of {DayText.Of(signOff.On)}.";
        }

        return _upsets.LastOrDefault(u => u.Act > signOff.Kept && (u.Kind & by) != Disturbance.None) is { } upset ? $"after it, {upset.Words}." : "";
    }

    private string Sentence(GateState state, IReadOnlyList<CheckStatus> checks, IReadOnlyList<OverrideStatus> overrides) => state switch
    {
        GateState.Open => $"Tap open: {definition.Name}.",
        GateState.Overridden => $"Tap opened without all checks. {overrides.Last(o => o.Counts).Words}",
        _ => $"Tap shut: {Wanting(checks)}.",
    };

    private static string Wanting(IReadOnlyList<CheckStatus> checks)
    {
        var wanting = checks.Where(c => c.State != CheckState.Signed).ToList();
        return wanting is [{ State: CheckState.Stale } only] ? $"{only.Check.Name} counts no longer"
            : wanting is [var one] ? $"{one.Check.Name} is not signed"
            : string.Create(CultureInfo.InvariantCulture, $"{wanting.Count} of {checks.Count} checks are not signed or count no longer");
    }

    // What was not looked at stands beside the override wherever it is shown, with what it can lead to: no check is skipped in silence.
    private static string Unchecked(IReadOnlyList<CheckStatus> checks) => string.Concat(checks
        .Where(c => c.State != CheckState.Signed)
        .Select(c => $" Not checked: {c.Check.Name}. {c.Check.Otherwise}"));
}
