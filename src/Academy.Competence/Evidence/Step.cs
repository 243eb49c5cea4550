using Academy.Competence.Decisions;
using Academy.Competence.Statistics;

namespace Academy.Competence.Evidence;

/// <summary>What kind of thing a step is.</summary>
public enum StepKind
{
    /// <summary>A groom that nobody rated for this skill, done alone: exposure and recency only.</summary>
    Alone,

    /// <summary>A groom that a senior watched and that is not rated for this skill (yet): exposure and recency only.</summary>
    Watched,

    /// <summary>A groom that a senior watched and rated.</summary>
    Rated,

    /// <summary>A groom done alone whose finished dog a senior inspected, or on which a complaint was upheld.</summary>
    Inspected,

    /// <summary>Work elsewhere (a previous job, a freelancer's other salon): recency only.</summary>
    Elsewhere,

    /// <summary>The owner's declaration of experience: a clearance that stands for the grooms recency asks, all on its day.</summary>
    Declared,

    /// <summary>The owner's clearance.</summary>
    Cleared,

    /// <summary>A stand-down, by the owner or by the rule on critical incidents.</summary>
    StoodDown,

    /// <summary>A stand-down lifted.</summary>
    Lifted,
}

/// <summary>One thing that moves one person's tally in one skill. A person's path is her steps in order of <see cref="At"/>, then <see cref="Id"/>.</summary>
/// <param name="At">When it happened: for a groom its end, for a decision its moment.</param>
/// <param name="Id">The groom, decision or incident it comes from; breaks ties of time.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Day">The salon's local day of <paramref name="At"/>.</param>
/// <param name="Verdict">What a rated or inspected groom said; null for every other kind.</param>
/// <param name="Breed">The breed groomed; empty for decisions.</param>
/// <param name="Senior">Who rated it; null for an upheld complaint or an unrated incident and where nobody did.</param>
/// <param name="Limits">What a clearance is limited to; null for every other kind.</param>
/// <param name="IsException">A clearance against the rules.</param>
/// <param name="ThresholdVersion">The version a clearance was taken under; 0 for every other kind.</param>
/// <param name="IsReviewOpen">A stand-down by rule whose incident is not reviewed yet.</param>
/// <param name="IsTechnique">A stand-down after an incident to which technique contributed.</param>
public sealed record Step(
    DateTimeOffset At,
    Guid Id,
    StepKind Kind,
    DateOnly Day,
    Verdict? Verdict = null,
    string Breed = "",
    PersonId? Senior = null,
    Limits? Limits = null,
    bool IsException = false,
    int ThresholdVersion = 0,
    bool IsReviewOpen = false,
    bool IsTechnique = false
);

/// <summary>A step and whose path in which skill it belongs to.</summary>
public sealed record StepOf(PersonId Person, SkillCode Skill, Step Step);
