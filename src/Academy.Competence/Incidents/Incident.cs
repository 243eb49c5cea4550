using Academy.Competence.Salons;

namespace Academy.Competence.Incidents;

/// <summary>Where on the dog.</summary>
public enum BodySite
{
    /// <summary>Not on the body.</summary>
    None,

    /// <summary>An ear.</summary>
    Ear,

    /// <summary>The eye or the face.</summary>
    EyeOrFace,

    /// <summary>The tongue or the mouth.</summary>
    Mouth,

    /// <summary>The neck or throat.</summary>
    Neck,

    /// <summary>The back or a side.</summary>
    BackOrSide,

    /// <summary>The belly, groin or genitals.</summary>
    BellyOrGroin,

    /// <summary>The flank fold or an armpit.</summary>
    FlankOrArmpit,

    /// <summary>A leg.</summary>
    Leg,

    /// <summary>A foot, pad or nail.</summary>
    Foot,

    /// <summary>The tail or under it.</summary>
    Tail,
}

/// <summary>Whether a vet came into it.</summary>
public enum VetContact
{
    /// <summary>Not needed.</summary>
    NotNeeded,

    /// <summary>Phoned.</summary>
    Phoned,

    /// <summary>The dog was seen.</summary>
    Seen,
}

/// <summary>Something that went wrong or nearly. An injury to a person is not described here: it goes into the salon's accident book.</summary>
/// <param name="Id">Stable.</param>
/// <param name="Groom">The groom it happened on or showed after.</param>
/// <param name="Person">Who was grooming, until a review says otherwise.</param>
/// <param name="ReportedBy">Anyone may report on any groom, also days later.</param>
/// <param name="ReportedAt">When it was reported.</param>
/// <param name="NoticedAt">When it was noticed; may be after collection.</param>
/// <param name="Kind">What.</param>
/// <param name="Severity">How bad for the dog.</param>
/// <param name="Site">Where on the dog.</param>
/// <param name="During">Techniques it happened during; empty where nobody can tell: then all that the person did are concerned.</param>
/// <param name="Vet">Whether a vet came into it.</param>
/// <param name="IsCritical">Whether the owner's list made it critical when it was reported.</param>
/// <param name="WhatHappened">Words.</param>
/// <param name="WhatWasDone">Words.</param>
public sealed record Incident(
    IncidentId Id,
    GroomId Groom,
    PersonId Person,
    PersonId ReportedBy,
    DateTimeOffset ReportedAt,
    DateTimeOffset NoticedAt,
    IncidentKind Kind,
    Severity Severity,
    BodySite Site,
    Listed<SkillCode> During,
    VetContact Vet,
    bool IsCritical,
    Words WhatHappened,
    Words WhatWasDone
);

/// <summary>What the owner's review found.</summary>
/// <param name="Incident">The incident.</param>
/// <param name="ReviewedBy">The owner.</param>
/// <param name="ReviewedAt">When.</param>
/// <param name="Responsible">Who was responsible; null where nobody was.</param>
/// <param name="IsTechnique">Whether technique contributed; if not, it replays as one unsuitable groom.</param>
/// <param name="Found">Words.</param>
public sealed record IncidentReview(
    IncidentId Incident,
    PersonId ReviewedBy,
    DateTimeOffset ReviewedAt,
    PersonId? Responsible,
    bool IsTechnique,
    Words Found
);

/// <summary>An incident and its review, if there is one.</summary>
public sealed record IncidentStory(Incident Incident, IncidentReview? Review)
{
    /// <summary>Who answers for it as things stand: the groomer until the review, then whom it names; null for nobody.</summary>
    public PersonId? Concerned => Review is null ? Incident.Person : Review.Responsible;
}
