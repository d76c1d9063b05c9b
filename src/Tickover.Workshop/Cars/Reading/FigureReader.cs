using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads the catalogue's figures out of an object.</summary>
internal static class FigureReader
{
    /// <summary>Rounding of unit conversion, as a part of the range's end, that is not held against anybody.</summary>
    private const double Rounding = 1e-9;

    /// <summary>A jet's bare number below this was surely meant in millimetres.</summary>
    private const double SmallestJetNumber = 10 * 1e-5;

    /// <summary>Reads the figures that an object gives.</summary>
    /// <param name="from">The object.</param>
    /// <param name="entries">The lines of the catalogue that may stand there.</param>
    /// <returns>The figures by key; a faulty one has no value.</returns>
    public static IReadOnlyDictionary<string, GivenFigure> Read(ObjectReader? from, IReadOnlyList<CatalogueEntry> entries)
    {
        var given = new Dictionary<string, GivenFigure>(StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            if (from?[entry.Name] is { } node)
            {
                given.Add(entry.Definition.Key, new GivenFigure(from.At(entry.Name), node.Text, Value(entry, node, from)));
            }
        }

        return given;
    }

    private static double Value(CatalogueEntry entry, SourceNode node, ObjectReader from)
    {
        var path = from.At(entry.Name);
        var measure = entry.Definition.Measure;
        if (node.Kind is not (SourceKind.Text or SourceKind.Number))
        {
            from.Faults.Add(path, $"Found {node.Described}", $"{FigureText.Form(measure)}, {entry.AllowedText}", $"Write {FigureText.Example(measure)}, or take the member out for the default.");
            return double.NaN;
        }

        if (FigureText.Explain(measure, node.Text, out var si) is { } problem)
        {
            from.Faults.Add(path, problem.Problem, $"{problem.Allowed}, {entry.AllowedText}", problem.WhatToDo);
            return double.NaN;
        }

        return InRange(entry, si, from, node.Text);
    }

    private static double InRange(CatalogueEntry entry, double si, ObjectReader from, string typed)
    {
        var definition = entry.Definition;
        var low = definition.MinimumSi - (Rounding * Math.Abs(definition.MinimumSi));
        var high = definition.MaximumSi + (Rounding * Math.Abs(definition.MaximumSi));
        if (si >= low && si <= high)
        {
            return Math.Clamp(si, definition.MinimumSi, definition.MaximumSi);
        }

        var shown = FigureText.Show(definition.Measure, si);
        var isJetInMillimetres = definition.Measure == Measure.JetBore && si > 0 && si < SmallestJetNumber;
        var wayOut = isJetInMillimetres
            ? $"A bare number counts 1/100 mm; if millimetres are meant, write \"{typed.Trim()} mm\"."
            : "Check the figure and its unit.";
        from.Faults.Add(from.At(entry.Name), $"{shown} is too {(si < low ? "small" : "large")} for \"{definition.Label}\"", entry.AllowedText, wayOut);
        return double.NaN;
    }
}
