namespace Tickover.Acceptance.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Test_assembly_is_named_after_what_it_tests() =>
        Assert.Equal("Tickover.Acceptance.Tests", typeof(AssemblyTests).Assembly.GetName().Name);
}
