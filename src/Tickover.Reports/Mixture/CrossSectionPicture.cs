using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>λ over speed at one opening, or over opening at one speed, with its band, the target and the trial.</summary>
public static class CrossSectionPicture
{
    // λ outside these is off the picture, 1
    private const double RichestShown = 0.5;
    private const double LeanestShown = 1.5;
    private const double Margin = 0.02;

    /// <summary>Draws the cut.</summary>
    /// <param name="view">Where to cut and what to show.</param>
    /// <returns>One svg element with the transform of its axis in its data attributes.</returns>
    public static string ToSvg(CrossSectionView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var samples = Cut.Through(view);
        var frame = CutFrame.For(view, Range(samples, view.Fitted.RelativeBand));
        var drawing = new SvgDrawing(view.IdPrefix);
        var layers = new CutLayers(drawing, frame, samples, view);
        layers.Draw();
        return drawing.ToSvg(new SvgFrame
        {
            Width = frame.Width,
            Height = frame.Height,
            ClassName = "cross-section-picture",
            Label = Sentence(view),
            Data = frame.Data(),
        });
    }

    /// <summary>The cut in one sentence.</summary>
    /// <param name="view">Where to cut.</param>
    /// <returns>Such as "λ over engine speed at 11° of throttle: 0.86 to 1.05; above the target from 2,000 to 3,500 rpm."</returns>
    public static string Sentence(CrossSectionView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var samples = Cut.Through(view);
        var title = view.Axis == CrossSectionAxis.Speed
            ? $"λ over engine speed at {Shown.Opening(view.Spot.ThrottleDegrees)} of throttle"
            : $"λ over throttle opening at {Shown.SpeedWithUnit(view.Spot.SpeedRpm)}";
        var answers = samples.Where(s => s.Fitted is not null).ToArray();
        if (answers.Length == 0)
        {
            return $"{title}: no answer.";
        }

        var range = Shown.Range(Shown.Lambda(answers.Min(s => s.Fitted!.Value)), Shown.Lambda(answers.Max(s => s.Fitted!.Value)));
        var beyond = string.Join("; ", new[]
        {
            Beyond("leaner", samples, s => s.Fitted > s.Target.Leanest, view.Axis),
            Beyond("richer", samples, s => s.Fitted < s.Target.Richest, view.Axis),
        }.Where(b => b.Length > 0));
        return beyond.Length > 0 ? $"{title}: {range}; {beyond}." : $"{title}: {range}, within the target.";
    }

    /// <summary>The same figures as a table.</summary>
    /// <param name="view">Where to cut.</param>
    /// <returns>The table, one row for each computed speed or opening.</returns>
    public static PictureTable TableFor(CrossSectionView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        const int everyOther = 9;
        var speed = view.Axis == CrossSectionAxis.Speed;
        string Figure(double? value) => value is { } lambda ? Shown.Lambda(lambda) : Shown.Nothing;
        var rows = Cut.Through(view).Where((_, k) => k % everyOther == 0).Select(s => (IReadOnlyList<string>)
        [
            speed ? Shown.SpeedWithUnit(s.Along) : Shown.Opening(s.Along),
            Figure(s.Fitted), Figure(s.Trial), Shown.Range(Shown.Lambda(s.Target.Richest), Shown.Lambda(s.Target.Leanest)),
            s.Why?.ShortWords ?? MapLabels.Name(s.Feeding),
        ]);
        return new PictureTable(
            speed ? $"λ at {Shown.Opening(view.Spot.ThrottleDegrees)} of throttle" : $"λ at {Shown.SpeedWithUnit(view.Spot.SpeedRpm)}",
            [speed ? "Engine speed" : "Throttle", "Fitted", "Trial", "Target", "Feeds"], [.. rows]);
    }

    // Of several stretches the longest is told
    private static string Beyond(string word, IReadOnlyList<CutSample> samples, Func<CutSample, bool> isBeyond, CrossSectionAxis axis)
    {
        var stretch = CutLayers.Split(samples, (a, b) => isBeyond(a) == isBeyond(b)).Where(r => isBeyond(r[0])).MaxBy(r => r.Count);
        if (stretch is null)
        {
            return "";
        }

        var (from, to) = (stretch[0].Along, stretch[^1].Along);
        var where = axis == CrossSectionAxis.Speed
            ? Shown.WithUnit(Shown.Range(Shown.Speed(from), Shown.Speed(to)), "rpm")
            : Shown.Range(Shown.Opening(from), Shown.Opening(to));
        return $"{word} than the target from {where}";
    }

    private static (double Low, double High) Range(IReadOnlyList<CutSample> samples, double band)
    {
        var values = samples.SelectMany(s => new[] { s.Fitted * (1 - band), s.Fitted * (1 + band), s.Trial, s.Target.Richest, s.Target.Leanest })
            .OfType<double>().Select(v => Math.Clamp(v, RichestShown, LeanestShown)).ToArray();
        return (values.Min() - Margin, values.Max() + Margin);
    }
}
