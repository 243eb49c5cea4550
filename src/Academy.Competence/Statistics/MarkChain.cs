using MathNet.Numerics.LinearAlgebra;

namespace Academy.Competence.Statistics;

/// <summary>Whole marks that move with each rated groom until they reach a goal: an absorbing Markov chain.</summary>
/// <remarks>The states are 0 to <paramref name="goal"/> - 1; every mark at or above the goal is the end.</remarks>
internal sealed class MarkChain(int goal, Func<int, int> suitable, Func<int, int> unsuitable)
{
    /// <summary>The chances to arrive at groom 1, 2, 3 and so on, without end; draw as many as are wanted.</summary>
    /// <param name="start">Marks before the first groom, 0 to goal - 1.</param>
    /// <param name="rateAt">The chance that groom n (from 1) is unsuitable.</param>
    public IEnumerable<double> Arrivals(int start, Func<int, double> rateAt)
    {
        var now = new double[goal];
        now[start] = 1;
        for (var groom = 1; ; groom++)
        {
            (now, var arrived) = Move(now, Rates.Checked(rateAt(groom)));
            yield return arrived;
        }
    }

    /// <summary>The mean number of grooms until arrival, from each state: the solution of (I - Q) x = 1.</summary>
    public Vector<double> MeanGrooms(double rate)
    {
        var left = Matrix<double>.Build.DenseIdentity(goal);
        for (var marks = 0; marks < goal; marks++)
        {
            Take(left, marks, suitable(marks), 1 - rate);
            Take(left, marks, unsuitable(marks), rate);
        }
        return left.Solve(Vector<double>.Build.Dense(goal, 1));
    }

    private (double[] Next, double Arrived) Move(double[] now, double rate)
    {
        var next = new double[goal];
        var arrived = 0.0;
        for (var marks = 0; marks < goal; marks++)
        {
            Put(suitable(marks), now[marks] * (1 - rate));
            Put(unsuitable(marks), now[marks] * rate);
        }
        return (next, arrived);

        void Put(int marks, double chance)
        {
            if (marks >= goal)
                arrived += chance;
            else
                next[marks] += chance;
        }
    }

    private void Take(Matrix<double> left, int from, int to, double chance)
    {
        if (to < goal)
            left[from, to] -= chance;
    }
}
