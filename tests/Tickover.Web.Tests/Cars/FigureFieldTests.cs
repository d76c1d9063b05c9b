using Bunit;
using Tickover.Web.Cars;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Tests.Cars;

public sealed class FigureFieldTests : BunitContext
{
    private static readonly DescriptionField Choke = new()
    {
        Path = "barrel.choke",
        Label = "Choke",
        Text = "36 mm",
        Unit = "mm",
        Range = "8 mm to 80 mm",
        Help = "Narrowest bore.",
    };

    [Fact]
    public void A_given_figure_can_be_sent_back_to_its_default()
    {
        var field = Render<FigureField>(p => p.Add(f => f.Field, Choke));

        Assert.Equal("barrel.choke", field.Find("button").GetAttribute("value"));
        Assert.Equal("Back to the default: Choke", field.Find("button").GetAttribute("aria-label"));
        Assert.Equal(field.Find("input").Id, field.Find("label").GetAttribute("for"));
    }

    [Fact]
    public void A_default_is_said_with_its_origin_and_has_no_button()
    {
        var field = Render<FigureField>(p => p.Add(f => f.Field, Choke with { Text = "", Default = "36.8 mm. Common practice: 0.8 × the throttle bore." }));

        Assert.Contains("Empty: 36.8 mm. Common practice", field.Find(".about").TextContent, StringComparison.Ordinal);
        Assert.Empty(field.FindAll("button"));
    }

    [Fact]
    public void A_fault_stands_beside_the_field_with_what_is_allowed_and_what_to_do()
    {
        var fault = new Fault("barrel.choke", "4 mm is too small", "8 mm to 80 mm", "Measure it at the waist.");
        var field = Render<FigureField>(p => p.Add(f => f.Field, Choke with { Text = "4 mm", Fault = fault }));

        Assert.Contains("4 mm is too small", field.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("Allowed: 8 mm to 80 mm. Measure it at the waist.", field.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal(field.Find(".about").Id, field.Find("input").GetAttribute("aria-describedby"));
    }
}
