using MathNet.Numerics.LinearAlgebra;
using Tickover.Physics.Balancing;

namespace Tickover.Physics.Tests.Balancing;

/// <summary>The evidence is that of the whole covariance, however it is computed.</summary>
public sealed class FaultEvidenceTests
{
    private static readonly double[] Readings = [0.9, -0.3, 0.4, 1.7, -0.6];

    private static readonly double[] Noise = [0.1, 0.2, 0.1, 0.3, 0.1];
    private static readonly double[] All = [1, 1, 1, 1, 1];

    [Fact]
    public void Logarithm_equals_the_whole_normal_density()
    {
        var ordinary = Ordinary();
        var (a, b) = (new FaultPattern([[1, 0, 0, 2, 0]], 0.5, 0.4), new FaultPattern([[0, 1, 0, 0, 0], [0, 0, 0, 0, 1]], 0, 0.8));

        var quick = new FaultEvidence(Readings, Noise, [(All, Math.Sqrt(0.5))]);

        Assert.Equal(Whole(ordinary, []), quick.Log([]), 9);
        Assert.Equal(Whole(ordinary, [a]), quick.Log([a]), 9);
        Assert.Equal(Whole(ordinary, [a, b]), quick.Log([a, b]), 9);
    }

    [Fact]
    public void Fault_that_made_the_readings_wins()
    {
        var evidence = new FaultEvidence([0.1, -0.1, 2.1, 0, -0.1], [0.04, 0.04, 0.04, 0.04, 0.04], []);

        Assert.True(evidence.Log([One(2)]) > evidence.Log([One(3)]) + 10);
        Assert.True(evidence.Log([One(2)]) > evidence.Log([]) + 10);
    }

    private static FaultPattern One(int place) => new([[.. Enumerable.Range(0, 5).Select(i => i == place ? 1.0 : 0)]], 2, 0.5);

    private static Matrix<double> Ordinary()
    {
        var all = Vector<double>.Build.Dense(All);
        return Matrix<double>.Build.DenseOfDiagonalArray(Noise) + (0.5 * all.OuterProduct(all));
    }

    private static double Whole(Matrix<double> ordinary, IReadOnlyList<FaultPattern> faults)
    {
        var (rest, covariance) = (Vector<double>.Build.Dense(Readings), ordinary.Clone());
        foreach (var shape in faults.SelectMany(f => f.Shapes.Select(s => (Shape: Vector<double>.Build.DenseOfEnumerable(s), Fault: f))))
        {
            rest -= shape.Fault.Mean * shape.Shape;
            covariance += shape.Fault.Deviation * shape.Fault.Deviation * shape.Shape.OuterProduct(shape.Shape);
        }

        return -0.5 * (rest.DotProduct(covariance.Inverse() * rest) + Math.Log(covariance.Determinant()));
    }
}
