using Academy.Competence.Incidents;
using Academy.Competence.SignOffs;

namespace Academy.Competence.Grooms;

/// <summary>One groom and everything that was ever said about it: what evidence is made from.</summary>
/// <param name="Groom">As last told.</param>
/// <param name="SignOffs">All sign-offs, replaced ones too, in the order in which they were made.</param>
/// <param name="Incidents">Incidents and near misses with their reviews.</param>
/// <param name="Admitted">Late sign-offs that the owner lets count.</param>
/// <param name="Overturned">Sign-offs that the owner took back after a dispute: they stay visible and do not count.</param>
/// <param name="Complaints">Complaints upheld, each against the person who answers for it.</param>
/// <param name="LoggedAt">When it was first kept.</param>
public sealed record GroomStory(
    Groom Groom,
    Listed<SignOff> SignOffs,
    Listed<IncidentStory> Incidents,
    Listed<SignOffId> Admitted,
    Listed<SignOffId> Overturned,
    Listed<UpheldComplaint> Complaints,
    DateTimeOffset LoggedAt
)
{
    /// <summary>A groom of which nothing more has been said yet.</summary>
    public static GroomStory Of(Groom groom, DateTimeOffset loggedAt) => new(groom, [], [], [], [], [], loggedAt);

    /// <summary>The sign-off in force of one person's part; null while there is none.</summary>
    public SignOff? SignOffOf(PersonId person) => SignOffs.LastOrDefault(signed => signed.Subject == person);

    /// <summary>Whether any part of it is signed off.</summary>
    public bool IsSignedOff => !SignOffs.IsEmpty;

    /// <summary>Whether this sign-off counts: in force, on time or admitted, not overturned.</summary>
    public bool Counts(SignOff signed) =>
        SignOffOf(signed.Subject)?.Id == signed.Id
        && (!signed.IsLate || Admitted.Contains(signed.Id))
        && !Overturned.Contains(signed.Id);
}

/// <summary>A complaint that the owner upheld: for the person it counts as one unsuitable groom.</summary>
/// <param name="Person">Who answers for it.</param>
/// <param name="At">When it was upheld.</param>
/// <param name="Skills">The skills it is about.</param>
public sealed record UpheldComplaint(PersonId Person, DateTimeOffset At, Listed<SkillCode> Skills);
