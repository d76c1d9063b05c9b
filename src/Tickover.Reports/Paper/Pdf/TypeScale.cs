using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>The sizes of type on paper, pt: those of the screen's sheet at 96 px to the inch.</summary>
internal sealed class TypeScale
{
    /// <summary>Nothing is set smaller, pt.</summary>
    internal const double Smallest = 7.5;

    private readonly double _factor;

    /// <summary>Sets up the sizes.</summary>
    /// <param name="factor">1 as usual; less where a sheet has to hold more.</param>
    internal TypeScale(double factor)
    {
        _factor = factor;
        Body = Look(10.5, 1.38);
        Lead = Look(12.4, 1.4);
        Small = Look(9.6, 1.35) with { Paint = Paint.Ink2 };
        Title = Look(22.5, 1.14) with { Bold = true };
    }

    internal TextLook Body { get; }

    internal TextLook Lead { get; }

    internal TextLook Small { get; }

    internal TextLook Title { get; }

    /// <summary>A distance that shrinks with the type, pt.</summary>
    internal double Space(double points) => points * _factor;

    internal TextLook Heading(int level) => Look(level == 2 ? 13.5 : 11.25, 1.25) with { Bold = true };

    internal TextLook For(Voice voice) => voice switch
    {
        Voice.Lead => Lead,
        Voice.Small => Small,
        _ => Body,
    };

    private TextLook Look(double size, double lead)
    {
        var set = Math.Max(size * _factor, Smallest);
        // Small type on a full sheet is also set tighter
        return new TextLook(set, set * (_factor < 1 ? Math.Min(lead, 1.28) : lead));
    }
}
