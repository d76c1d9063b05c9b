using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class FigureCatalogueTests
{
    private static IEnumerable<CatalogueEntry> All => FigureCatalogue.Engine.Concat(FigureCatalogue.Barrel).Concat(FigureCatalogue.Ambient);

    [Fact]
    public void Every_key_stands_once_and_says_where_it_belongs()
    {
        Assert.Equal(All.Count(), All.Select(e => e.Definition.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.All(FigureCatalogue.Engine, e => Assert.StartsWith("engine.", e.Definition.Key, StringComparison.Ordinal));
        Assert.All(FigureCatalogue.Barrel, e => Assert.StartsWith("barrel.", e.Definition.Key, StringComparison.Ordinal));
        Assert.All(FigureCatalogue.Ambient, e => Assert.StartsWith("ambient.", e.Definition.Key, StringComparison.Ordinal));
        Assert.All(All, e => Assert.Same(e, FigureCatalogue.Find(e.Definition.Key)));
    }

    [Fact]
    public void Every_line_is_complete()
    {
        Assert.All(All, e =>
        {
            Assert.True(e.Definition.MinimumSi < e.Definition.MaximumSi, e.Definition.Key);
            Assert.EndsWith(".", e.Definition.Help, StringComparison.Ordinal);
            Assert.False(string.IsNullOrWhiteSpace(e.Definition.Label), e.Definition.Key);
            Assert.False(string.IsNullOrWhiteSpace(e.Definition.Part), e.Definition.Key);
            Assert.Equal(e.DefaultKind is null, e.DefaultText.Length == 0);
        });
    }

    [Fact]
    public void Only_bore_and_stroke_must_be_given() =>
        Assert.Equal("engine.bore engine.stroke", string.Join(' ', All.Where(e => e.DefaultKind is null).Select(e => e.Definition.Key)));

    [Fact]
    public void The_defaults_of_the_model_are_those_of_its_specifications()
    {
        var car = CarTexts.Sound(CarTexts.Twin);
        var spec = car.ToEngineSpec();

        Assert.Equal(new Tickover.Physics.Breathing.Combustion().HeatPerAirJoulesPerKilogram, spec.Combustion.HeatPerAirJoulesPerKilogram);
        Assert.Equal(new Tickover.Physics.Metering.PumpCircuit { JetDiameterMetres = 1 }.CheckOpeningPascals, spec.Barrels[0].Pump!.CheckOpeningPascals);
    }
}
