using MathNet.Numerics;
using Witnessmark.Handbook.Numerics;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>What makes the slack vary round the chain: the rear sprocket or wheel, the front sprocket, or the chain itself.</summary>
/// <remarks>
/// <para><b>Formula.</b> S(s) = μ + A₂ cos(2πs/z₂) + B₂ sin + A₁ cos(2πs/z₁) + B₁ sin + Σⱼ [aⱼ cos(2πjs/N) + bⱼ sin], least squares;
/// each group of q columns is tested by F = ((RSS₀ − RSS)/q)/(RSS/dof), p = I_{dof/(dof+qF)}(dof/2, q/2).</para>
/// <para><b>Units.</b> s in links past a mark on the chain, counted on without starting anew; slack in mm.</para>
/// <para><b>Source.</b> Own model; F test of nested linear models (Draper and Smith, Applied Regression Analysis, from memory).
/// Checked by normal equations and by quadrature of the beta integral; the fit against NIST StRD.</para>
/// <para><b>Valid when</b> the readings go evenly over two rounds of the chain (24 readings, 9 links apart, suit 108 links) and the
/// axle is not moved. The amplitude of one component stays below a quarter of the mean.</para>
/// </remarks>
public static class ChainRound
{
    /// <summary>Fewer readings say nothing but their ends.</summary>
    public const int LeastReadings = 16;

    // Readings that the model fits without any residual would make F infinite: the residual deviation is taken as no smaller
    // than a nanometre, far above the rounding of the arithmetic and far below any caliper.
    private const double SmallestResidual = 1e-6;

    /// <summary>The components.</summary>
    /// <param name="drive">Teeth and links.</param>
    /// <param name="readings">One or more, in any order.</param>
    /// <param name="harmonics">Waves of the chain that are looked for, 1 or more.</param>
    /// <param name="significance">p below which a component is called significant.</param>
    /// <returns>Refused as <c>tooFewReadings</c>.</returns>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public static Answer<Round> From(
        RoundDrive drive,
        IReadOnlyList<RoundReading> readings,
        int harmonics = 3,
        double significance = 0.01
    )
    {
        if (readings.Count == 0)
            throw new ArgumentException("One reading or more is needed.", nameof(readings));
        var lowest = readings.MinBy(r => r.Slack.Millimetres);
        var ends = new Round(lowest.Slack, readings.Max(r => r.Slack.Millimetres), lowest.Link);
        var model = new RoundModel(drive, harmonics);
        if (readings.Count < LeastReadings || readings.Count <= model.Unknowns)
            return Answer<Round>.Refuse(
                "tooFewReadings",
                $"With {readings.Count} readings only the ends can be told: take {Math.Max(LeastReadings, model.Unknowns + 1)} or more, evenly over two rounds of the chain.",
                ends
            );
        return Told(model, readings, ends, significance);
    }

    private static Round Told(RoundModel model, IReadOnlyList<RoundReading> readings, Round ends, double significance)
    {
        var design = model.Design(readings);
        var slack = readings.Select(r => r.Slack.Millimetres).ToArray();
        var dependence = new Dependence(design);
        if (!dependence.None)
            return Confounded(model, dependence, dependence.Shortest(slack), ends);
        var fit = LeastSquares.Fit(design, slack);
        var variance = Math.Max(fit.ResidualSquares / fit.DegreesOfFreedom, SmallestResidual * SmallestResidual);
        Tested Test(Columns group)
        {
            var without = LeastSquares.Fit(RoundModel.Without(design, group), slack).ResidualSquares;
            var f = Math.Max(0, without - fit.ResidualSquares) / group.Count / variance;
            var p = UpperTail(f, group.Count, fit.DegreesOfFreedom);
            return new(f, p, p < significance);
        }
        return ends with
        {
            Mean = new Length(fit.Coefficients[0]),
            Residual = new Length(fit.ResidualDeviation),
            Components = new(
                model.Wave(fit.Coefficients, RoundModel.Wheel, model.Drive.RearTeeth, Test(RoundModel.Wheel)),
                model.Wave(fit.Coefficients, RoundModel.Front, model.Drive.FrontTeeth, Test(RoundModel.Front)),
                model.Curve(fit.Coefficients, Test(model.Chain))
            ),
        };
    }

    private static Round Confounded(RoundModel model, Dependence dependence, Fitted fit, Round ends)
    {
        bool Mixed(Columns group) => Enumerable.Range(group.First, group.Count).Any(dependence.Involves);
        var names = new List<string>();
        foreach (
            var (name, group) in new[]
            {
                ("wheel", RoundModel.Wheel),
                ("front", RoundModel.Front),
                ("chain", model.Chain),
                ("mean", RoundModel.Mean),
            }
        )
            if (Mixed(group))
                names.Add(name);
        return ends with
        {
            Mean = Mixed(RoundModel.Mean) ? null : new Length(fit.Coefficients[0]),
            Residual = new Length(fit.ResidualDeviation),
            Confounded = names,
        };
    }

    // P(F > f); the complement is taken inside the beta integral so that small values keep their digits.
    private static double UpperTail(double f, int q, int dof) =>
        SpecialFunctions.BetaRegularized(dof / 2.0, q / 2.0, dof / (dof + q * f));
}

/// <summary>Teeth and links of the drive that is measured.</summary>
/// <param name="FrontTeeth">Of the front sprocket.</param>
/// <param name="RearTeeth">Of the rear sprocket.</param>
/// <param name="Links">Of the chain.</param>
public readonly record struct RoundDrive(int FrontTeeth, int RearTeeth, int Links);

/// <summary>One reading.</summary>
/// <param name="Link">Links that have passed since the mark.</param>
/// <param name="Slack">Slack read there.</param>
public readonly record struct RoundReading(double Link, Length Slack);
