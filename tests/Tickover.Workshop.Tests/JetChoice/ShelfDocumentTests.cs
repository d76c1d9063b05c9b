using Tickover.Workshop.JetChoice;

namespace Tickover.Workshop.Tests.JetChoice;

/// <summary>A shelf as somebody types it.</summary>
public sealed class ShelfDocumentTests
{
    [Fact]
    public void A_shelf_holds_sizes_by_part_and_tubes_by_code()
    {
        var (shelf, faults) = ShelfDocument.Read(
            """{"format":"tickover-shelf-1","choke":{"32 mm":6},"mainJet":{"135":6,"122,5":2},"emulsionTubes":{"B3":{"count":6,"holes":["2 x 1 mm at 4 mm"]}}}""");

        Assert.Empty(faults);
        Assert.Equal([32], shelf!.Enough(JetParts.Choke, 6));
        Assert.Equal([135], shelf.Enough(JetParts.MainJet, 3));
        Assert.Equal(2, shelf.Count(JetParts.MainJet, 122.5));
        Assert.Equal("B3", Assert.Single(shelf.Tubes).Code);
    }

    [Theory]
    [InlineData("", "Line 1")]
    [InlineData("[]", "format")]
    [InlineData("""{"format":"tickover-shelf-2"}""", "format")]
    [InlineData("""{"format":"tickover-shelf-1","mainjet":{}}""", "mainjet: a shelf holds")]
    [InlineData("""{"format":"tickover-shelf-1","screwTurns":{"2":4}}""", "screwTurns: a shelf holds")]
    [InlineData("""{"format":"tickover-shelf-1","mainJet":{"big":4}}""", "mainJet.big: a size such as")]
    [InlineData("""{"format":"tickover-shelf-1","mainJet":{"130":-4}}""", "mainJet.130: how many")]
    [InlineData("""{"format":"tickover-shelf-1","mainJet":{"130":"many"}}""", "mainJet.130: how many")]
    [InlineData("""{"format":"tickover-shelf-1","emulsionTubes":{"B3":{"count":4,"holes":["two"]}}}""", "emulsionTubes.B3")]
    [InlineData("""{"format":"tickover-shelf-1","emulsionTubes":["B3"]}""", "emulsionTubes: by code")]
    public void What_is_wrong_with_a_shelf_is_said_and_where(string json, string said)
    {
        var (shelf, faults) = ShelfDocument.Read(json);

        Assert.Null(shelf);
        Assert.Contains(said, Assert.Single(faults), StringComparison.Ordinal);
    }
}
