using Tickover.Physics.Breathing;

namespace Tickover.Workshop.Mixture;

/// <summary>Air sides already solved, by what they depend on. Safe to share between threads.</summary>
internal sealed class SurveyAir
{
    private readonly Lock _gate = new();
    private readonly Dictionary<string, AirSide> _solved;

    internal SurveyAir(SurveyAir? earlier = null) => _solved = earlier is null ? [] : new(earlier._solved, StringComparer.Ordinal);

    /// <summary>The air side of a group, solved now unless it is known.</summary>
    internal AirSide Get(SurveyModel model, IntakeGroup group, SurveyGrid grid, CancellationToken cancellation)
    {
        var key = AirKey.Of(model.Engine, group, model.Ambient, grid);
        lock (_gate)
        {
            if (!_solved.TryGetValue(key, out var air))
            {
                air = AirSideSolver.Solve(
                    model.Engine, group, model.Ambient, new OperatingGrid(grid.SpeedsRpm, grid.ThrottleDegrees), null, cancellation);
                _solved.Add(key, air);
            }

            return air;
        }
    }
}
