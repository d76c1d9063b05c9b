namespace Tickover.Workshop.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Test_assembly_is_named_after_what_it_tests() =>
        Assert.Equal("Tickover.Workshop.Tests", typeof(AssemblyTests).Assembly.GetName().Name);
}
