using System.Reflection;

namespace Tickover.Architecture.Tests;

/// <summary>The seven assemblies of the house.</summary>
internal static class House
{
    public static Assembly Physics { get; } = Assembly.Load("Tickover.Physics");

    public static Assembly Workshop { get; } = Assembly.Load("Tickover.Workshop");

    public static Assembly Reports { get; } = Assembly.Load("Tickover.Reports");

    public static Assembly Instruments { get; } = Assembly.Load("Tickover.Instruments");

    public static Assembly Practice { get; } = Assembly.Load("Tickover.Practice");

    public static Assembly Web { get; } = Assembly.Load("Tickover.Web");

    public static Assembly Cli { get; } = Assembly.Load("tickover");

    public static IReadOnlyList<Assembly> All { get; } = [Physics, Workshop, Reports, Instruments, Practice, Web, Cli];
}
