namespace Tickover.Physics.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Test_assembly_is_named_after_what_it_tests() =>
        Assert.Equal("Tickover.Physics.Tests", typeof(AssemblyTests).Assembly.GetName().Name);
}
