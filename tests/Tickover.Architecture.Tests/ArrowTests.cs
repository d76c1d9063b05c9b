using System.Reflection;
using System.Xml.Linq;

namespace Tickover.Architecture.Tests;

/// <summary>Who may know whom.</summary>
public sealed class ArrowTests
{
    public static TheoryData<string, string[], string[]> Arrows => new()
    {
        // project, other projects it may know, packages it may know
        { "Tickover.Physics", [], ["MathNet.Numerics"] },
        { "Tickover.Workshop", ["Tickover.Physics"], ["UnitsNet"] },
        { "Tickover.Practice", ["Tickover.Workshop"], [] },
        { "Tickover.Reports", ["Tickover.Workshop", "Tickover.Physics"], ["PDFsharp", "PdfSharp", "QRCoder"] },
        { "Tickover.Instruments", ["Tickover.Workshop"], ["Sep", "UnitsNet"] },
        { "Tickover.Web", ["Tickover.Instruments", "Tickover.Physics", "Tickover.Workshop", "Tickover.Reports", "Tickover.Records", "Tickover.Practice"], ["Markdig", "Microsoft.AspNetCore.OpenApi", "QRCoder"] },
        {
            "Tickover.Records",
            ["Tickover.Workshop"],
            [
                "Microsoft.EntityFrameworkCore", "Microsoft.EntityFrameworkCore.Sqlite", "Microsoft.Data.Sqlite", "Npgsql", "Npgsql.EntityFrameworkCore.PostgreSQL",
                "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies", "CsvHelper",
            ]
        },
        { "Tickover.Cli", ["Tickover.Instruments", "Tickover.Physics", "Tickover.Workshop", "Tickover.Reports", "Tickover.Records", "Tickover.Web", "Tickover.Practice"], ["System.CommandLine", "Spectre.Console", "CsvHelper"] },
    };

    [Theory]
    [MemberData(nameof(Arrows))]
    public void Project_declares_only_what_it_may_know(string project, string[] projects, string[] packages)
    {
        var file = XDocument.Load(Path.Combine(Repository.Root, "src", project, project + ".csproj"));

        var declared = file.Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));
        var bought = file.Descendants("PackageReference")
            .Where(r => r.Attribute("PrivateAssets")?.Value is not "all")
            .Select(r => r.Attribute("Include")!.Value);

        Assert.Empty(declared.Except(projects, StringComparer.Ordinal));
        Assert.Empty(bought.Except(packages, StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Arrows))]
    public void Assembly_uses_only_what_it_may_know(string project, string[] projects, string[] packages)
    {
        var assembly = Assembly.Load(project is "Tickover.Cli" ? "tickover" : project);
        var pages = project is "Tickover.Web" or "Tickover.Cli";

        var strangers = assembly.GetReferencedAssemblies()
            .Select(r => r.Name!)
            .Where(n => !IsRuntime(n, pages) && !projects.Contains(n, StringComparer.Ordinal) && !packages.Any(p => IsOf(p, n)));

        Assert.Empty(strangers);
    }

    // Cuts through tanks and the parts of a fuel line are drawn from the physics' own shapes, decision 0196; nothing else of Reports may.
    [Fact]
    public void Reports_draw_from_the_workshop_and_reach_for_the_physics_of_tanks_and_fuel_lines_only()
    {
        var reports = Path.Combine(Repository.Root, "src", "Tickover.Reports");
        var reaching = Directory.EnumerateFiles(reports, "*.cs", SearchOption.AllDirectories)
            .Select(f => (Folder: Path.GetRelativePath(reports, f).Split(Path.DirectorySeparatorChar)[0], Text: File.ReadAllText(f)))
            .Where(f => f.Folder is not ("obj" or "bin") && f.Text.Contains("Tickover.Physics", StringComparison.Ordinal))
            .Select(f => f.Folder).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

        Assert.Equal(["Supply", "Tanks"], reaching, StringComparer.Ordinal);
    }

    // A package may come as several assemblies: "Spectre.Console" and "Spectre.Console.Ansi".
    private static bool IsOf(string package, string assembly) =>
        assembly.StartsWith(package, StringComparison.Ordinal) && (assembly.Length == package.Length || assembly[package.Length] == '.');

    private static bool IsRuntime(string name, bool pages) =>
        name is "System" or "netstandard" or "mscorlib" || (name.StartsWith("System.", StringComparison.Ordinal) && name is not "System.CommandLine")
        || (pages && name.StartsWith("Microsoft.", StringComparison.Ordinal));
}
