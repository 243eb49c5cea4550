using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Facts;

/// <summary>
/// Something that happened and is appended, never edited: a mistake is put right by a further fact. Who recorded it, when and on
/// which device stands beside it in the ledger.
/// </summary>
public abstract record Fact
{
    private protected Fact() { }

    /// <summary>When it happened, where that is not the moment it was recorded.</summary>
    public virtual DateTimeOffset? HappenedAt => null;
}

/// <summary>The salon begins.</summary>
public sealed record SalonOpened(Words Name, string TimeZone) : Fact;

/// <summary>The salon's name and its vet's name and telephone number, for the heat card.</summary>
public sealed record SalonDescribed(Words Name, Words VetName, Words VetPhone) : Fact;

/// <summary>The salon's own numbers.</summary>
public sealed record HouseRulesSet(HouseRules Rules) : Fact;

/// <summary>A person joins, or is described anew: name, role, end date, age, deputy.</summary>
public sealed record PersonDescribed(
    PersonId Person,
    Words Name,
    Role Role,
    DateOnly JoinedOn,
    DateOnly? EndsOn,
    bool IsUnder18,
    bool IsDeputy,
    bool? WritesModules = null
) : Fact;

/// <summary>A person leaves; from that day on she may do nothing here.</summary>
public sealed record PersonLeft(PersonId Person, DateOnly On) : Fact;

/// <summary>A person who left is back.</summary>
public sealed record PersonCameBack(PersonId Person, DateOnly On) : Fact;

/// <summary>Who is in on a day: each tick and each tick taken away.</summary>
public sealed record PresenceTicked(PersonId Person, DateOnly Day, bool IsIn) : Fact;

/// <summary>The owner declares a person's experience in a skill: a clearance to start from.</summary>
public sealed record ExperienceDeclared(
    DecisionId Id,
    PersonId Person,
    SkillCode Skill,
    DateOnly On,
    int ThresholdVersion,
    Words Reason
) : Fact;

/// <summary>Work elsewhere, with its source: for recency only.</summary>
public sealed record WorkElsewhere(DecisionId Id, PersonId Person, SkillCode Skill, DateOnly On, int Grooms, Words Source) : Fact;

/// <summary>A dog is met, or described anew.</summary>
public sealed record DogDescribed(
    DogId Dog,
    Words Name,
    string Breed,
    SkillCode? Coat,
    SkillCode? SecondCoat,
    Listed<SkillCode> Hazards,
    DateOnly? BornOn,
    AgeByLook Age,
    int? WeightKg,
    Words Client,
    bool IsGone
) : Fact;

/// <summary>A skill is added, renamed, retired, or asks for other modules.</summary>
public sealed record SkillDescribed(SkillCode Skill, SkillKind Kind, string Name, Listed<ModuleName> Modules, bool IsRetired)
    : Fact;

/// <summary>A new version of a threshold, from a day on.</summary>
public sealed record ThresholdSet(Threshold Threshold) : Fact;

/// <summary>A groom begins: the dog is on the table. Finished later by <see cref="GroomLogged"/> with the same id.</summary>
public sealed record GroomStarted(GroomId Groom, DogId Dog, PersonId By, PersonId? Watcher, DateTimeOffset At) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => At;
}

/// <summary>A groom that was started by mistake and never happened.</summary>
public sealed record GroomAbandoned(GroomId Groom, Words Why) : Fact;

/// <summary>A groom as told; told again by whoever logged it, before a sign-off, it replaces the earlier telling.</summary>
public sealed record GroomLogged(Groom Groom) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => Groom.EndedAt;
}

/// <summary>
/// A groom told as done alone, in skills in which its doer was not alone by what was known when it began. Said anew it replaces
/// what was said before; without skills it takes that back.
/// </summary>
public sealed record GroomFlagged(GroomId Groom, PersonId Person, Listed<SkillCode> Skills) : Fact;

/// <summary>The owner has spoken about a flagged groom with whoever did it.</summary>
public sealed record FlagSpokenAbout(GroomId Groom, PersonId Person, Words Says) : Fact;

/// <summary>A sign-off, or a correction of one.</summary>
public sealed record SignedOff(SignOff SignOff) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => SignOff.SignedAt;
}

/// <summary>The owner lets a late sign-off count.</summary>
public sealed record LateSignOffAdmitted(GroomId Groom, SignOffId SignOff, Words Reason) : Fact;

/// <summary>Whoever was judged disputes a sign-off.</summary>
public sealed record SignOffDisputed(GroomId Groom, SignOffId SignOff, PersonId By, Words Says) : Fact;

/// <summary>The owner answers a dispute; the record says so when the owner was the judge.</summary>
public sealed record DisputeAnswered(GroomId Groom, SignOffId SignOff, bool IsOverturned, bool OwnerWasJudge, Words Says) : Fact;

/// <summary>An incident or near miss is reported.</summary>
public sealed record IncidentReported(Incident Incident) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => Incident.NoticedAt;
}

/// <summary>The owner's review of an incident.</summary>
public sealed record IncidentReviewed(GroomId Groom, IncidentReview Review) : Fact;

/// <summary>A complaint or redo is upheld against somebody's groom.</summary>
public sealed record ComplaintUpheld(GroomId Groom, PersonId Person, Listed<SkillCode> Skills, Words Says) : Fact;

/// <summary>A clearance. Several under one signature share <paramref name="Signature"/>.</summary>
/// <param name="Id">This decision.</param>
/// <param name="Signature">The signature it was given under.</param>
/// <param name="Person">Who may.</param>
/// <param name="Skill">Do what.</param>
/// <param name="At">From when.</param>
/// <param name="ThresholdVersion">The version of the rules it was taken under.</param>
/// <param name="Limits">What it is limited to.</param>
/// <param name="IsException">Against the rules.</param>
/// <param name="Reason">The written reason; needed for an exception.</param>
public sealed record ClearanceGiven(
    DecisionId Id,
    DecisionId Signature,
    PersonId Person,
    SkillCode Skill,
    DateTimeOffset At,
    int ThresholdVersion,
    Limits Limits,
    bool IsException,
    Words Reason
) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => At;
}

/// <summary>The owner says not yet, with words to the person. It changes no standing.</summary>
public sealed record ClearanceRefused(DecisionId Id, PersonId Person, SkillCode Skill, Words Says) : Fact;

/// <summary>The owner or a deputy stops a clearance.</summary>
public sealed record StoodDown(DecisionId Id, PersonId Person, SkillCode Skill, DateTimeOffset At, Words Reason) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => At;
}

/// <summary>The owner or a deputy lifts a stand-down.</summary>
public sealed record StandDownLifted(DecisionId Id, PersonId Person, SkillCode Skill, DateTimeOffset At, Words Reason) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => At;
}

/// <summary>Temperature and humidity of a room.</summary>
public sealed record RoomRead(RoomReading Reading, string Room) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => Reading.At;
}

/// <summary>A quiz handed in: the module's edition by content hash, the draw's seed, what was answered, what it came to.</summary>
/// <param name="Attempt">Handing in twice is one attempt.</param>
/// <param name="Person">Who took it.</param>
/// <param name="Module">The module.</param>
/// <param name="Edition">Its edition's number.</param>
/// <param name="ContentHash">What the person really saw.</param>
/// <param name="IsRefresher">A refresher, not the whole quiz.</param>
/// <param name="Seed">The seed of the draw.</param>
/// <param name="StartedAt">When it was drawn.</param>
/// <param name="HandedInAt">When it was handed in.</param>
/// <param name="Answers">Per question id what was given, as <see cref="Quizzes.Answer.Written"/> has it, in the order of the draw.</param>
/// <param name="Right">Questions right.</param>
/// <param name="Of">Questions drawn.</param>
/// <param name="MustKnowWrong">Must-know questions that were wrong.</param>
/// <param name="HasPassed">At least 80 % and every must-know right.</param>
/// <param name="ReadOutBy">A senior who read it out, if one did.</param>
/// <param name="Drawn">The questions chosen, in their order; null where the seed alone drew them.</param>
/// <param name="IsCatchUp">True for a quiz on what changed in an edition; null for any other.</param>
/// <param name="RightAsked">How many had to be right, where judges asked for it; null where the kind of quiz says.</param>
public sealed record AttemptHandedIn(
    AttemptId Attempt,
    PersonId Person,
    ModuleName Module,
    int Edition,
    string ContentHash,
    bool IsRefresher,
    int Seed,
    DateTimeOffset StartedAt,
    DateTimeOffset HandedInAt,
    Listed<string> Answers,
    int Right,
    int Of,
    Listed<string> MustKnowWrong,
    bool HasPassed,
    PersonId? ReadOutBy,
    Listed<string>? Drawn = null,
    bool? IsCatchUp = null,
    int? RightAsked = null
) : Fact
{
    /// <inheritdoc/>
    public override DateTimeOffset? HappenedAt => HandedInAt;
}

/// <summary>The salon's edition of a module, as of now: what knowledge is asked against.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">Its edition's number.</param>
/// <param name="SafetyCriticalSince">The edition that brought the last safety change.</param>
/// <param name="RefresherDays">The longest gap between refreshers; null for none.</param>
/// <param name="RenewedEachSpring">Whether it is passed again each spring.</param>
/// <param name="ContentHash">The fingerprint of what is read and asked.</param>
/// <param name="CatchUpBy">Where it brings a safety change: the last day on which an older pass still counts.</param>
public sealed record ModuleEditionSeen(
    ModuleName Module,
    int Edition,
    int SafetyCriticalSince,
    int? RefresherDays,
    bool RenewedEachSpring,
    string ContentHash,
    DateOnly? CatchUpBy = null
) : Fact;

/// <summary>The salon made an edition of a module its own: written here, or taken over from the library.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">Its edition's number, above every one before.</param>
/// <param name="ContentHash">The fingerprint of what is read and asked.</param>
/// <param name="WrittenBy">Who wrote it.</param>
/// <param name="ReviewedBy">The second person who read it; null where there was nobody who could.</param>
/// <param name="IsSafetyCritical">Whether it changes something that a dog or a person can be hurt by.</param>
/// <param name="Change">What changed, in the author's words.</param>
/// <param name="LibraryHash">The fingerprint of the library's edition whose words it has; null where the words are the salon's own.</param>
public sealed record ModulePublished(
    ModuleName Module,
    int Edition,
    string ContentHash,
    PersonId WrittenBy,
    PersonId? ReviewedBy,
    bool IsSafetyCritical,
    Words Change,
    string? LibraryHash = null
) : Fact;

/// <summary>
/// Free words of one entry of the ledger were erased. The entry stays in the chain with the seal of what is gone; names in the
/// salon's book are not erased but described anew.
/// </summary>
public sealed record WordsErased(long Entry, Words Why) : Fact;

/// <summary>A senior or the owner adds to a module how it is done here.</summary>
/// <param name="Note">Made once: saying it twice is one note.</param>
/// <param name="Module">The module under which it stands.</param>
/// <param name="By">Who says it.</param>
/// <param name="Says">What.</param>
public sealed record ModuleNoted(NoteId Note, ModuleName Module, PersonId By, Words Says) : Fact;

/// <summary>A note is taken back; the ledger keeps that it was there.</summary>
public sealed record ModuleNoteTakenBack(NoteId Note, ModuleName Module, PersonId By) : Fact;

/// <summary>A senior says for every question of an edition how likely a groomer who is only just safe has it right.</summary>
/// <param name="Module">The module.</param>
/// <param name="ContentHash">The edition judged: another one has to be judged anew.</param>
/// <param name="By">Who judges.</param>
/// <param name="Chances">Per question id the chance in percent, as <c>heat-01:85</c>.</param>
public sealed record QuestionsJudged(ModuleName Module, string ContentHash, PersonId By, Listed<string> Chances) : Fact;
