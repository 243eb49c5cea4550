namespace Academy.Competence.Trade;

/// <summary>What one person may lift alone. A dog is a load like any other.</summary>
/// <remarks>
/// After the filter of the UK Health and Safety Executive's leaflet INDG143. The figures are for a healthy adult near the
/// waist and up to about 10 m of carrying; they are no limits in law and no promise of safety. Young workers, expectant
/// mothers and sore backs need an assessment of their own.
/// </remarks>
public static class Lifting
{
    /// <summary>The salon's limit unless it sets another, in kg.</summary>
    /// <remarks>From memory: the leaflet's figure near the waist is about 25 kg for men and 16 kg for women.</remarks>
    public const decimal UsualLimitKilograms = 25;

    /// <summary>What one person may lift alone, in kg, under the conditions of the work.</summary>
    /// <param name="nearWaistKilograms">The limit for one calm lift near the waist, above 0.</param>
    /// <param name="liftsPerMinute">How often, 0 or more.</param>
    /// <param name="twistDegrees">How far the body turns in the lift, 0 to 180.</param>
    public static decimal LimitKilograms(
        decimal nearWaistKilograms = UsualLimitKilograms,
        decimal liftsPerMinute = 0,
        decimal twistDegrees = 0
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(nearWaistKilograms);
        return nearWaistKilograms * LeftByFrequency(liftsPerMinute) * LeftByTwist(twistDegrees);
    }

    /// <summary>Whether a dog of this weight is above the limit, so that two people lift it. At the limit one may.</summary>
    public static bool NeedsTwoPeople(decimal dogKilograms, decimal limitKilograms = UsualLimitKilograms)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dogKilograms);
        return dogKilograms > limitKilograms;
    }

    /// <summary>What a lift repeated so often leaves of the limit.</summary>
    /// <param name="liftsPerMinute">0 or more.</param>
    /// <remarks>
    /// Published: 30 % off at 1 to 2 a minute, 50 % off at 5 to 8, 80 % off above 12. Between those bands the published
    /// words say nothing; we take the stricter neighbour.
    /// </remarks>
    public static decimal LeftByFrequency(decimal liftsPerMinute) =>
        liftsPerMinute switch
        {
            < 0 => throw new ArgumentOutOfRangeException(
                nameof(liftsPerMinute),
                liftsPerMinute,
                "Nobody lifts less often than never."
            ),
            < 1 => 1m,
            <= 2 => .7m,
            <= 8 => .5m,
            _ => .2m,
        };

    /// <summary>What a lift with a turn of the body leaves of the limit: 10 % off past 45 degrees, 20 % off past 90.</summary>
    /// <param name="twistDegrees">0 to 180.</param>
    public static decimal LeftByTwist(decimal twistDegrees) =>
        twistDegrees switch
        {
            < 0 or > 180 => throw new ArgumentOutOfRangeException(
                nameof(twistDegrees),
                twistDegrees,
                "A turn lies from 0 to 180."
            ),
            <= 45 => 1m,
            <= 90 => .9m,
            _ => .8m,
        };
}
