using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Skills;

namespace Academy.Web.Demo;

/// <summary>Somebody of the demo salon. Nobody here is real.</summary>
/// <param name="Id">Always the same, so that a demo can be told about.</param>
/// <param name="Name">Invented.</param>
/// <param name="Role">Role in the salon.</param>
/// <param name="JoinedDaysAgo">Days before the demo's today.</param>
/// <param name="IsUnder18">Whether under 18.</param>
/// <param name="IsDeputy">Whether a deputy.</param>
/// <param name="Starts">How often a groom of the first weeks needed fixing, in percent.</param>
/// <param name="Settles">How often it does in the end, in percent.</param>
/// <param name="PerWeek">Grooms a week.</param>
/// <param name="Coats">Coats that this person is given to groom.</param>
/// <param name="LeftDaysAgo">Days since leaving; null for somebody who is here.</param>
internal sealed record CastMember(
    PersonId Id,
    string Name,
    Role Role,
    int JoinedDaysAgo,
    int Starts,
    int Settles,
    int PerWeek,
    SkillCode[] Coats,
    bool IsUnder18 = false,
    bool IsDeputy = false,
    int? LeftDaysAgo = null
);

/// <summary>The demo salon: Slipway Yard in Marram Bay, a town by the sea that is on no map.</summary>
internal static class DemoCast
{
    public const string SalonName = "Slipway Yard, Marram Bay";

    public const string TimeZone = "Europe/London";

    /// <summary>How far back the demo's history goes.</summary>
    public const int DaysBack = 546;

    private static readonly SkillCode[] Everything =
    [
        SkillBook.Smooth,
        SkillBook.Double,
        SkillBook.Wire,
        SkillBook.Silky,
        SkillBook.Wool,
        SkillBook.Combination,
    ];

    public static readonly CastMember Owner = new(Id(1), "Wilhelmina Trevarrow", Role.Owner, DaysBack, 3, 3, 4, Everything);

    public static readonly CastMember Bettina = new(
        Id(2),
        "Bettina Orrock",
        Role.Senior,
        DaysBack,
        3,
        3,
        6,
        Everything,
        IsDeputy: true
    );

    public static readonly CastMember Caspian = new(Id(3), "Caspian Lowe", Role.Senior, DaysBack, 4, 4, 6, Everything);

    /// <summary>Alone in most everyday coats.</summary>
    public static readonly CastMember Tamsin = new(
        Id(4),
        "Tamsin Eddowes",
        Role.Junior,
        530,
        35,
        4,
        9,
        [SkillBook.Smooth, SkillBook.Double, SkillBook.Silky, SkillBook.Combination, SkillBook.Wool]
    );

    /// <summary>Well on the way, and once stood down.</summary>
    public static readonly CastMember Idris = new(
        Id(5),
        "Idris Fallon",
        Role.Junior,
        400,
        45,
        6,
        8,
        [SkillBook.Smooth, SkillBook.Double, SkillBook.Wool, SkillBook.Combination]
    );

    /// <summary>Under 18, half-way.</summary>
    public static readonly CastMember Perpetua = new(
        Id(6),
        "Perpetua Quill",
        Role.Junior,
        190,
        40,
        7,
        7,
        [SkillBook.Smooth, SkillBook.Silky, SkillBook.Double],
        IsUnder18: true
    );

    /// <summary>In the first weeks.</summary>
    public static readonly CastMember Robin = new(
        Id(7),
        "Robin Achterberg",
        Role.Junior,
        38,
        55,
        10,
        5,
        [SkillBook.Smooth, SkillBook.Double]
    );

    /// <summary>Was here and left.</summary>
    public static readonly CastMember Dominic = new(
        Id(8),
        "Dominic Sallow",
        Role.Junior,
        520,
        40,
        12,
        7,
        [SkillBook.Smooth, SkillBook.Wire, SkillBook.Combination],
        LeftDaysAgo: 120
    );

    public static readonly CastMember[] All = [Owner, Bettina, Caspian, Tamsin, Idris, Perpetua, Robin, Dominic];

    public static readonly CastMember[] Juniors = [Tamsin, Idris, Perpetua, Robin, Dominic];

    private static PersonId Id(int number) => new(new Guid(0x0A11CE00, 0, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, (byte)number));
}
