using Academy.Competence.Statistics;

namespace Academy.Competence.SignOffs;

/// <summary>How much support the groomer needed. Entrustment levels are the accepted form for "may she do it alone" (ten Cate 2020, doi 10.1097/ACM.0000000000003427).</summary>
public enum SupportLevel
{
    /// <summary>The senior did it, the junior watched.</summary>
    SeniorDidIt = 1,

    /// <summary>Hands on together.</summary>
    HandsOn = 2,

    /// <summary>Talked through.</summary>
    TalkedThrough = 3,

    /// <summary>The senior stood by and was not needed.</summary>
    StoodBy = 4,

    /// <summary>No senior needed.</summary>
    NotNeeded = 5,
}

/// <summary>The six criteria.</summary>
public enum Criterion
{
    /// <summary>Handling and restraint.</summary>
    Handling,

    /// <summary>Preparation.</summary>
    Preparation,

    /// <summary>Tool and blade choice.</summary>
    Tools,

    /// <summary>Skin safety; must be met.</summary>
    SkinSafety,

    /// <summary>Finish.</summary>
    Finish,

    /// <summary>The dog's comfort; must be met.</summary>
    Comfort,
}

/// <summary>What the senior says of one criterion.</summary>
public enum Mark
{
    /// <summary>Nothing was chosen.</summary>
    Unset,

    /// <summary>Met.</summary>
    Met,

    /// <summary>Not yet.</summary>
    NotYet,

    /// <summary>Not seen: neutral, except for skin safety and the dog's comfort.</summary>
    NotSeen,
}

/// <summary>The six criteria as marked.</summary>
public sealed record Criteria(Mark Handling, Mark Preparation, Mark Tools, Mark SkinSafety, Mark Finish, Mark Comfort)
{
    /// <summary>Every criterion with its mark, in the order of the form.</summary>
    public IEnumerable<(Criterion Criterion, Mark Mark)> All =>
        [
            (Criterion.Handling, Handling),
            (Criterion.Preparation, Preparation),
            (Criterion.Tools, Tools),
            (Criterion.SkinSafety, SkinSafety),
            (Criterion.Finish, Finish),
            (Criterion.Comfort, Comfort),
        ];

    /// <summary>All six met.</summary>
    public static readonly Criteria AllMet = new(Mark.Met, Mark.Met, Mark.Met, Mark.Met, Mark.Met, Mark.Met);

    /// <summary>Whether anything is not yet met.</summary>
    public bool HasNotYet => All.Any(one => one.Mark == Mark.NotYet);

    /// <summary>Whether skin safety and the dog's comfort were seen and met.</summary>
    public bool IsSafe => SkinSafety == Mark.Met && Comfort == Mark.Met;
}

/// <summary>A skill for which a sign-off counts, and what it says of it.</summary>
public sealed record CountedFor(SkillCode Skill, Verdict Verdict);

/// <summary>A senior's judgement of one person's part in one groom. Never edited: a correction is a new one that names the one it replaces and why.</summary>
/// <param name="Id">Stable.</param>
/// <param name="Groom">The groom.</param>
/// <param name="Subject">Whose part.</param>
/// <param name="Senior">Who watched and signs.</param>
/// <param name="SignedAt">When.</param>
/// <param name="Level">How much support was needed.</param>
/// <param name="Criteria">The six criteria.</param>
/// <param name="NotSuitable">Techniques and hazards that the senior marked as not suitable.</param>
/// <param name="Counted">The skills it counts for, with what it says of each, as shown before saving.</param>
/// <param name="NotCounted">Skills of the groom in which the senior is not alone: listed, not counted.</param>
/// <param name="IsInspection">A groom done alone, judged on the finished dog.</param>
/// <param name="IsLate">After its time: it does not count unless the owner says so with a reason.</param>
/// <param name="InsteadOf">The senior named at logging, where she was away and another really watched.</param>
/// <param name="Replaces">The sign-off that this one corrects.</param>
/// <param name="Why">Why it corrects.</param>
/// <param name="Phrases">Codes of quick phrases tapped for the junior.</param>
/// <param name="ToJunior">Words to the junior.</param>
public sealed record SignOff(
    SignOffId Id,
    GroomId Groom,
    PersonId Subject,
    PersonId Senior,
    DateTimeOffset SignedAt,
    SupportLevel Level,
    Criteria Criteria,
    Listed<SkillCode> NotSuitable,
    Listed<CountedFor> Counted,
    Listed<SkillCode> NotCounted,
    bool IsInspection,
    bool IsLate,
    PersonId? InsteadOf,
    SignOffId? Replaces,
    Words Why,
    Listed<string> Phrases,
    Words ToJunior
);
