namespace Academy.Competence.People;

/// <summary>A person's role in one salon. Whoever is alone in a skill and is a senior or the owner may judge it.</summary>
public enum Role
{
    /// <summary>Learns, grooms under a senior's eye, and alone where cleared.</summary>
    Junior,

    /// <summary>Judges the grooms of others in the skills in which she is alone.</summary>
    Senior,

    /// <summary>Decides, sets thresholds, answers for the salon. May also judge.</summary>
    Owner,
}

/// <summary>One person in one salon, as last told.</summary>
/// <param name="Id">Stable through changes of name and role.</param>
/// <param name="Name">What people here call her.</param>
/// <param name="Role">Her role in this salon.</param>
/// <param name="JoinedOn">Her first day.</param>
/// <param name="EndsOn">Her last day, where it is known beforehand; included.</param>
/// <param name="LeftOn">The day she left; from that day on she may do nothing. Null while she is here.</param>
/// <param name="IsUnder18">Whether she is under 18: her clearances by default hold only with a senior in the building.</param>
/// <param name="IsDeputy">Whether the owner lets her stand people down and lift it.</param>
/// <param name="WritesModules">Whether the owner lets her write modules and read those of others before they are published.</param>
public sealed record Person(
    PersonId Id,
    string Name,
    Role Role,
    DateOnly JoinedOn,
    DateOnly? EndsOn = null,
    DateOnly? LeftOn = null,
    bool IsUnder18 = false,
    bool IsDeputy = false,
    bool WritesModules = false
)
{
    /// <summary>Whether she works here on this day: joined, not left, her end date not past.</summary>
    public bool WorksOn(DateOnly day) => JoinedOn <= day && (LeftOn is null || day < LeftOn) && (EndsOn is null || day <= EndsOn);

    /// <summary>Whether her role lets her judge others' grooms at all.</summary>
    public bool MayJudgeByRole => Role is Role.Senior or Role.Owner;

    /// <summary>Whether she may write modules: the owner, or a senior whom the owner lets.</summary>
    public bool MayWriteModules => Role == Role.Owner || (Role == Role.Senior && WritesModules);

    /// <summary>Whether she may stand people down and lift it: the owner, or a named deputy.</summary>
    public bool MayStandDown => Role == Role.Owner || IsDeputy;
}
