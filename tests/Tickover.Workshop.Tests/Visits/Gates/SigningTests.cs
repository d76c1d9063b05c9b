using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Tests.Visits.Gates;

public sealed class SigningTests
{
    private static readonly SignWish Wish = new()
    {
        Key = Guid.Parse("0190a000-0000-7000-8000-00000000000a"),
        Gate = Gate.EngineMayRun,
        Check = GateKeys.Leaks,
        Person = Bench.Hand.Id,
        On = Bench.Today,
        Words = " 0.24 bar, dry by torch and paper ",
    };

    [Fact]
    public void A_check_becomes_an_act_of_one_sign_off()
    {
        var record = Bench.Visit();

        var act = Signing.Sign(record, Wish).Act!;

        var signed = Assert.IsType<SignOff>(Assert.Single(act.Items));
        Assert.Equal((record.Visit.Id, GateKeys.Leaks, "0.24 bar, dry by torch and paper", ""), (signed.Visit, signed.Check, signed.Seen, signed.Override));
        Assert.Equal((Wish.Key, "signed: the leak check"), (act.Key, act.Words));
    }

    [Fact]
    public void The_same_wish_makes_the_same_act()
    {
        var record = Bench.Visit();

        Assert.Equal(Signing.Sign(record, Wish).Act!.Items, Signing.Sign(record, Wish).Act!.Items);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void Nothing_seen_is_refused(string words) => Refused(Signing.Sign(Bench.Visit(), Wish with { Words = words }), "Write what was seen");

    [Fact]
    public void A_reason_is_demanded_for_an_override() =>
        Refused(Signing.Override(Bench.Visit(), Wish with { Check = "", Words = " " }), "Write why the tap is opened");

    [Theory]
    [InlineData("no-such-check")]
    [InlineData("")]
    [InlineData(GateKeys.RoadLeaks)]
    public void A_check_of_another_tap_is_refused(string check) => Refused(Signing.Sign(Bench.Visit(), Wish with { Check = check }), "There is no check");

    [Fact]
    public void Somebody_unknown_or_gone_is_refused()
    {
        Refused(Signing.Sign(Bench.Visit(), Wish with { Person = Id.New<Person>() }), "Say who signs");
        Refused(Signing.Sign(Bench.Visit(), Wish with { Person = Bench.Gone.Id }), "Say who signs");
    }

    [Theory]
    [InlineData("Petrol smell at the rear, drip not yet found", FindingState.Open, true)]
    [InlineData("Cross-pipe hose perished, weeps at the clip", FindingState.Declined, true)]
    [InlineData("Cross-pipe hose perished, weeps at the clip", FindingState.PutRight, false)]
    [InlineData("Rear oil leak onto the exhaust", FindingState.Open, false)]
    [InlineData("Brake pedal sinks", FindingState.Open, false)]
    public void The_leak_check_waits_for_a_fuel_leak_to_be_put_right(string what, FindingState state, bool refused)
    {
        var record = Bench.Visit() with { Findings = [new Finding { What = what, Severity = Severity.Unsafe, State = state }] };

        Assert.Equal(refused, Signing.Sign(record, Wish).Act is null);
        Assert.NotNull(Signing.Sign(record, Wish with { Check = GateKeys.ThrottleFree }).Act);
    }

    [Fact]
    public void An_override_carries_its_reason_and_names_the_leak_it_passes_over()
    {
        var record = Bench.Visit() with { Findings = [new Finding { What = "Tap weeps", Severity = Severity.Unsafe }] };

        var act = Signing.Override(record, Wish with { Check = "", Words = "to move it out of the road" }).Act!;

        var signed = Assert.IsType<SignOff>(Assert.Single(act.Items));
        Assert.Equal(("", "to move it out of the road"), (signed.Check, signed.Override));
        Assert.Contains("Tap weeps", act.Words, StringComparison.Ordinal);
        Assert.Contains("Tap weeps", signed.Seen, StringComparison.Ordinal);
    }

    private static void Refused(SigningAnswer answer, string words)
    {
        Assert.Null(answer.Act);
        Assert.Contains(answer.Refusals, r => r.Contains(words, StringComparison.Ordinal));
    }
}
