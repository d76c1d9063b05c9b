using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Components;

namespace Tickover.Architecture.Tests;

/// <summary>Types are closed, values do not change after they are made.</summary>
public sealed class TypeShapeTests
{
    [Fact]
    public void Public_types_are_sealed_static_abstract_values_or_interfaces()
    {
        var open = House.All.SelectMany(a => a.GetExportedTypes())
            .Where(t => t.IsClass && !t.IsSealed && !t.IsAbstract)
            // Razor writes its components as open classes; nobody can tell it otherwise.
            .Where(t => !typeof(ComponentBase).IsAssignableFrom(t) && t.Name is not "_Imports");

        Assert.Empty(open.Select(t => t.FullName));
    }

    [Fact]
    public void Physics_and_workshop_have_no_public_setters()
    {
        var settable = new[] { House.Physics, House.Workshop }
            .SelectMany(a => a.GetExportedTypes())
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(p => p.SetMethod is { IsPublic: true } set && !IsInit(set));

        Assert.Empty(settable.Select(p => $"{p.DeclaringType!.FullName}.{p.Name}"));
    }

    [Fact]
    public void Physics_and_workshop_have_no_public_fields_that_change()
    {
        var fields = new[] { House.Physics, House.Workshop }
            .SelectMany(a => a.GetExportedTypes())
            .Where(t => !t.IsEnum)
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(f => !f.IsInitOnly && !f.IsLiteral);

        Assert.Empty(fields.Select(f => $"{f.DeclaringType!.FullName}.{f.Name}"));
    }

    [Fact]
    public void No_type_is_named_after_nothing()
    {
        string[] hollow = ["Manager", "Helper", "Helpers", "Util", "Utils", "Utility", "Impl"];

        // A name with a bracket in it was given by a generator, not by one of us.
        var named = House.All.SelectMany(a => a.GetTypes()).Where(t => !t.FullName!.Contains('<', StringComparison.Ordinal)).Select(t => t.Name).Where(n => hollow.Any(h => n.EndsWith(h, StringComparison.Ordinal)));

        Assert.Empty(named);
    }

    private static bool IsInit(MethodInfo setter) => setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
