namespace Tickover.Web.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Test_assembly_is_named_after_what_it_tests() =>
        Assert.Equal("Tickover.Web.Tests", typeof(AssemblyTests).Assembly.GetName().Name);
}
