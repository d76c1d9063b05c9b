namespace Tickover.Cli.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Test_assembly_is_named_after_what_it_tests() =>
        Assert.Equal("Tickover.Cli.Tests", typeof(AssemblyTests).Assembly.GetName().Name);
}
