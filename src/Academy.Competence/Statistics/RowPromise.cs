namespace Academy.Competence.Statistics;

/// <summary>What a row lets through, in the figures that its owner is told before it is saved.</summary>
/// <param name="FineThrough">The chance that someone at the fine rate fills the row within the horizon.</param>
/// <param name="NotFineThrough">The same for someone at the rate that is not fine: the chance of a false clearance.</param>
/// <param name="OneInFiveThrough">The same for someone who needs fixing 1 groom in 5.</param>
/// <param name="OneInThreeThrough">The same for someone who needs fixing 1 groom in 3.</param>
/// <param name="MeanGroomsWhenFine">Rated grooms that someone at the fine rate needs on average.</param>
/// <param name="MeanGroomsWhenTwiceAsGood">The same at half the fine rate.</param>
public sealed record RowPromise(
    double FineThrough,
    double NotFineThrough,
    double OneInFiveThrough,
    double OneInThreeThrough,
    double MeanGroomsWhenFine,
    double MeanGroomsWhenTwiceAsGood
)
{
    /// <summary>Rated grooms without a full row after which a case goes to a talk, unless the salon chooses otherwise.</summary>
    /// <remarks>The horizon is part of the design: given time enough every row fills by luck.</remarks>
    public const int Horizon = 50;

    /// <summary>The figures of one profile within <paramref name="horizon"/> rated grooms, by the exact chain.</summary>
    public static RowPromise Of(RowProfile profile, int horizon = Horizon) =>
        new(
            FineThrough: RowChain.ChanceFullBy(profile, horizon, profile.P0),
            NotFineThrough: RowChain.ChanceFullBy(profile, horizon, profile.P1),
            OneInFiveThrough: RowChain.ChanceFullBy(profile, horizon, 1.0 / 5),
            OneInThreeThrough: RowChain.ChanceFullBy(profile, horizon, 1.0 / 3),
            MeanGroomsWhenFine: RowChain.MeanGrooms(profile, profile.P0),
            MeanGroomsWhenTwiceAsGood: RowChain.MeanGrooms(profile, profile.P0 / 2)
        );
}
