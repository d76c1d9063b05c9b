using System.Text.Json.Nodes;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;

namespace Tickover.Workshop.Tests.Supply;

public sealed class SupplyDocumentTests
{
    public static TheoryData<string, string, string, string> Slips => new()
    {
        // part, member, what is written, what has to be said of it
        { "filter", "kind", "\"fliter\"", "Did you mean \"filter\"?" },
        { "filter", "after", "\"long pip\"", "which is not in the line" },
        { "long pipe", "bore", "650", "bore" },
        { "long pipe", "bore", "\"wide\"", "bore" },
        { "long pipe", "bens", "3", "Did you mean \"bends\"?" },
        { "pump", "curve", "[{ \"flow\": 0, \"pressure\": 0.2 }, { \"flow\": 1, \"pressure\": 0.3 }]", "throttle the line step by step" },
        { "pump", "workshop", "{ \"deadHead\": 0.2, \"openFlow\": 1 }", "The pump is described twice" },
        { "rear carburettor", "share", "50", "The shares of the float valves do not make a whole" },
        { "front carburettor", "name", "\"rear carburettor\"", "Two parts are called rear carburettor" },
    };

    [Fact]
    public void The_sample_is_read_whole()
    {
        var supply = SupplySamples.Tern;

        Assert.Equal(15, supply.Line.Parts.Count);
        Assert.Equal(["rear carburettor", "middle carburettor", "front carburettor"], supply.Line.Valves.Select(valve => valve.Name), StringComparer.Ordinal);
        Assert.Equal("filter", supply.FineFilter);
        Assert.Equal(0.42, supply.Line.TankSurfaceHeightMetres, 9);
        Assert.Equal(PumpKind.Electric, supply.Line.Pump!.Kind);
        Assert.Equal(5, supply.Readings.Count);
        Assert.Equal(1.1e-3 / 60, supply.Readings[SupplyReadingKind.FlowAtChamber], 12);
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_named_with_a_way_out(string part, string member, string written, string said)
    {
        var read = SupplyDocument.Read(SupplySamples.Altered(document => SupplySamples.Part(document, part)[member] = JsonNode.Parse(written)));

        Assert.Null(read.Supply);
        Assert.Contains(read.Faults, fault => fault.ToString()!.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"format\": \"tickover-linkage-1\" }")]
    [InlineData("{ \"format\": \"tickover-supply-1\" }")]
    [InlineData("{ \"format\": \"tickover-supply-1\", \"name\": \"x\", \"tank\": { \"surface\": 1 }, \"engine\": { \"power\": 1 }, \"parts\": [1, {}, { \"kind\": 4 }] }")]
    [InlineData("{ \"format\": \"tickover-supply-1\", \"name\": \"x\", \"tank\": { \"surface\": 1 }, \"engine\": { \"power\": 1, \"fullLoad\": 2 }, \"parts\": [] }")]
    public void What_is_no_supply_is_refused_and_never_throws(string text)
    {
        var read = SupplyDocument.Read(text);

        Assert.Null(read.Supply);
        Assert.NotEmpty(read.Faults);
    }

    [Fact]
    public void Pressures_in_psi_are_the_same_line()
    {
        const double psi = 14.503773773; // in a bar: NIST SP 811, appendix B.9, psi = 6894.757 Pa
        var read = SupplyDocument.Read(SupplySamples.Altered(document =>
        {
            document["pressure"] = "psi";
            foreach (var point in SupplySamples.Part(document, "pump")["curve"]!.AsArray())
            {
                point!["pressure"] = psi * (double)point["pressure"]!;
            }
        }));

        Assert.NotNull(read.Supply);
        Assert.Equal(SupplySamples.Tern.Line.Pump!.Curve.Points[0].Item2, read.Supply.Line.Pump!.Curve.Points[0].Item2, 1e-2);
        Assert.Equal("3.77\u2009psi", SupplyWords.Pressure(read.Supply.Unit, 26_000));
    }

    [Fact]
    public void A_pump_known_by_two_workshop_figures_gives_them_back()
    {
        var analysis = SupplySamples.With(document =>
        {
            var pump = SupplySamples.Part(document, "pump");
            pump.Remove("curve");
            pump.Remove("volts");
            pump["workshop"] = JsonNode.Parse("{ \"deadHead\": 0.22, \"openFlow\": 1.5 }");
        });

        Assert.NotNull(analysis.OpenFlow);
        Assert.Equal(1.5, SupplyUnits.ToLitresMinute(analysis.OpenFlow.Value), 0.02);
    }
}
