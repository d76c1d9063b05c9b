namespace Tickover.Browser.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Test_assembly_is_named_after_what_it_tests() =>
        Assert.Equal("Tickover.Browser.Tests", typeof(AssemblyTests).Assembly.GetName().Name);
}
