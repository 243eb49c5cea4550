using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Standings;

namespace Academy.Competence;

/// <summary>
/// Why something does not hold or may not be done: a type with its numbers, never text. The web room gives each its words,
/// and a test fails if one has none. Only this library makes them.
/// </summary>
public abstract record Reason
{
    private protected Reason() { }
}

/// <summary>What a rule of a threshold still lacks, or what a standing rests on.</summary>
public abstract record Gap : Reason
{
    private protected Gap() { }
}

/// <summary>A module asked for is not passed, too old, overdue or not renewed.</summary>
public sealed record ModuleLacking(ModuleName Module, ModuleState State, DateOnly? PassedOn) : Gap;

/// <summary>The row is not full.</summary>
public sealed record RowNotFull(int Have, int Need) : Gap;

/// <summary>Too few breeds among the suitable of the last 20 rated grooms.</summary>
public sealed record TooFewBreeds(int Have, int Need) : Gap;

/// <summary>Too few seniors with 3 ratings each among the last 20 rated grooms.</summary>
public sealed record TooFewSeniors(int Have, int Need) : Gap;

/// <summary>A critical incident is too near: neither 20 rated grooms ago, nor 10 and 180 days.</summary>
public sealed record CriticalTooNear(DateOnly On, int RatedSince) : Gap;

/// <summary>Incidents of this person in this skill wait for the owner's review.</summary>
public sealed record ReviewOpen(int Incidents) : Gap;

/// <summary>Too few grooms lately.</summary>
public sealed record TooFewRecentGrooms(int Have, int Need, int WithinDays, DateOnly? LastOn) : Gap;

/// <summary>The mirrored test asked for a check.</summary>
public sealed record DriftedTooFar(int Alarm, int From, DateOnly On) : Gap;

/// <summary>The skill comes on top of a coat, and the person is alone in none.</summary>
public sealed record NoCoatAlone : Gap;

/// <summary>The owner has not decided yet.</summary>
public sealed record NotDecided : Gap;

/// <summary>The clearance was limited to a last day, which is past.</summary>
public sealed record ClearanceRanOut(DateOnly Until) : Gap;

/// <summary>A clearance was stopped and that has not been lifted.</summary>
public sealed record StoodDownSince(DateOnly On, bool IsTechnique) : Gap;

/// <summary>Too long without a groom: the row is walked back, and the owner signs again where the break was longer than 180 days.</summary>
public sealed record OnTheWayBack(WayBack Depth, int Have, int Need) : Gap;

/// <summary>The salon has turned the skill off.</summary>
public sealed record SkillTurnedOff : Gap;

/// <summary>The person does not work here on that day.</summary>
public sealed record NotWorkingHere(PersonId Person) : Reason;

/// <summary>Only the owner may do this.</summary>
public sealed record OwnerOnly : Reason;

/// <summary>Only the owner or a named deputy may do this.</summary>
public sealed record OwnerOrDeputyOnly : Reason;

/// <summary>Only a senior or the owner may do this.</summary>
public sealed record SeniorOrOwnerOnly(Role Role) : Reason;

/// <summary>Nobody judges her own work.</summary>
public sealed record OwnWork : Reason;

/// <summary>Words are needed here: a reason, or what to practise next.</summary>
public sealed record WordsNeeded(WordsFor For) : Reason;

/// <summary>What words are needed for.</summary>
public enum WordsFor
{
    /// <summary>What a criterion "not yet" means, for the junior.</summary>
    NotYet,

    /// <summary>Why a sign-off is corrected.</summary>
    Correction,

    /// <summary>Why a clearance is given against the rules.</summary>
    Exception,

    /// <summary>Why a clearance is refused.</summary>
    Refusal,

    /// <summary>Why somebody is stood down.</summary>
    StandDown,

    /// <summary>Why a stand-down is lifted.</summary>
    Lift,

    /// <summary>What the declared experience is.</summary>
    Declaration,

    /// <summary>Where the work elsewhere is known from.</summary>
    Source,

    /// <summary>What changed in a module.</summary>
    Change,

    /// <summary>What a note to a module says.</summary>
    Note,

    /// <summary>What is disputed.</summary>
    Dispute,

    /// <summary>What the owner answers to a dispute.</summary>
    Answer,

    /// <summary>Why a late sign-off counts.</summary>
    LateCounts,

    /// <summary>What happened.</summary>
    Incident,

    /// <summary>What the review found.</summary>
    Review,

    /// <summary>A name.</summary>
    Name,

    /// <summary>Why a groom ended early.</summary>
    EndedEarly,

    /// <summary>What was said about a flagged groom.</summary>
    SpokenAbout,

    /// <summary>Why words are erased.</summary>
    Erasure,
}

/// <summary>The support level was not chosen.</summary>
public sealed record LevelNotChosen : Reason;

/// <summary>A criterion was left unset.</summary>
public sealed record CriterionNotSet(SignOffs.Criterion Criterion) : Reason;

/// <summary>Whoever signs is alone in none of the skills of this groom.</summary>
public sealed record SignerAloneInNone : Reason;

/// <summary>Whoever signs has not said that she watched (or, for a solo groom, inspected the finished dog).</summary>
public sealed record SignerDidNotWatch : Reason;

/// <summary>The groom has not ended yet.</summary>
public sealed record GroomNotEnded : Reason;

/// <summary>There is a sign-off already; only a correction of it can follow.</summary>
public sealed record AlreadySignedOff(SignOffId By) : Reason;

/// <summary>The sign-off to be corrected is not the one in force.</summary>
public sealed record NotTheSignOffInForce : Reason;

/// <summary>The person did no part of this groom.</summary>
public sealed record DidNoPart(PersonId Person) : Reason;

/// <summary>A skill of this groom for which this sign-off does not count, because whoever signs is not alone in it.</summary>
public sealed record SignerNotAloneIn(SkillCode Skill, StandingKind Standing) : Reason;

/// <summary>A time lies in the future.</summary>
public sealed record InTheFuture(DateTimeOffset At) : Reason;

/// <summary>A groom ends before it starts.</summary>
public sealed record EndsBeforeItStarts : Reason;

/// <summary>A groom longer than a day is a slip of the clock.</summary>
public sealed record LongerThanADay : Reason;

/// <summary>No coat was chosen: unknown means no.</summary>
public sealed record NoCoatChosen : Reason;

/// <summary>No work was agreed: a dog with no work asks for nothing, and nothing asked would let everybody.</summary>
public sealed record NoWorkAgreed : Reason;

/// <summary>Somebody was named as watching her own groom.</summary>
public sealed record WatchedByHerself : Reason;

/// <summary>The groom is signed off already; it can no longer be corrected, only disputed or reported on.</summary>
public sealed record SignedOffAlready : Reason;

/// <summary>Only whoever logged the groom may correct it.</summary>
public sealed record NotHerGroom : Reason;

/// <summary>Muzzle on, and no time when it came off.</summary>
public sealed record MuzzleNeverOff : Reason;

/// <summary>The rules are not met for this skill: what lacks, one by one. The owner may decide against them with a reason.</summary>
public sealed record NotReady(SkillCode Skill, Gap Gap) : Reason;

/// <summary>An open review cannot be decided over: it is closed first.</summary>
public sealed record ReviewComesFirst(SkillCode Skill) : Reason;

/// <summary>The person is alone in this skill already, with these very limits.</summary>
public sealed record AloneAlready(SkillCode Skill) : Reason;

/// <summary>The limit's last day is past.</summary>
public sealed record LimitInThePast(DateOnly Until) : Reason;

/// <summary>Nothing was chosen to decide on.</summary>
public sealed record NothingChosen : Reason;

/// <summary>There is no clearance in this skill to stop.</summary>
public sealed record NothingToStop(SkillCode Skill) : Reason;

/// <summary>The person is not stood down in this skill.</summary>
public sealed record NotStoodDown(SkillCode Skill) : Reason;

/// <summary>Technique contributed to the incident: only the whole way back and a new decision end this stand-down.</summary>
public sealed record TechniqueContributed(SkillCode Skill) : Reason;

/// <summary>The incident is reviewed already.</summary>
public sealed record ReviewedAlready : Reason;

/// <summary>The dispute is answered already.</summary>
public sealed record AnsweredAlready : Reason;

/// <summary>Only the person whose groom was judged may dispute the sign-off.</summary>
public sealed record NotHerSignOff : Reason;

/// <summary>The flagged groom was spoken about already, or is not flagged.</summary>
public sealed record NothingToSpeakAbout : Reason;

/// <summary>Nobody disputed this sign-off: there is nothing to answer.</summary>
public sealed record NotDisputed : Reason;

/// <summary>The standing is another person's.</summary>
public sealed record NotHerStanding(SkillCode Skill) : Reason;

/// <summary>The entry holds no free words, or they are erased already.</summary>
public sealed record NothingToErase : Reason;

/// <summary>There is an open dispute already.</summary>
public sealed record DisputedAlready : Reason;

/// <summary>The sign-off was on time; there is nothing to admit.</summary>
public sealed record WasNotLate : Reason;

/// <summary>The person has a path in this skill already, and somebody is alone in it: declaring would pass the rules by.</summary>
public sealed record DeclaredAlready(SkillCode Skill) : Reason;

/// <summary>The last owner cannot leave or give the role up.</summary>
public sealed record LastOwner : Reason;

/// <summary>The person is not here to leave, or here already.</summary>
public sealed record HereAlready : Reason;

/// <summary>A day lies before the person joined.</summary>
public sealed record BeforeJoining(DateOnly JoinedOn) : Reason;

/// <summary>A code for a skill is taken.</summary>
public sealed record SkillCodeTaken(SkillCode Skill) : Reason;

/// <summary>A threshold can only be set from today on.</summary>
public sealed record FromDayPast(DateOnly FromDay) : Reason;

/// <summary>The reading is outside what a room can be.</summary>
public sealed record ReadingNotPlausible : Reason;

/// <summary>The birthday lies in the future, or too far back for a dog.</summary>
public sealed record BirthdayNotPlausible(DateOnly BornOn) : Reason;

/// <summary>The weight is not a dog's.</summary>
public sealed record WeightNotPlausible(int WeightKg) : Reason;

/// <summary>The two coats are one and the same.</summary>
public sealed record SameCoatTwice(SkillCode Coat) : Reason;

/// <summary>A failed quiz may be taken again, later.</summary>
public sealed record TakeAgainLater(DateTimeOffset At) : Reason;

/// <summary>The quiz was drawn from another edition of the module.</summary>
public sealed record NotTheEditionDrawn(ModuleName Module) : Reason;

/// <summary>In a skill that the dog asks for, this person's standing is not alone.</summary>
public sealed record NotAloneIn(SkillCode Skill, StandingKind Standing, int? Have, int? Need) : Reason;

/// <summary>Alone in a skill, but not on hot days, and this is one.</summary>
public sealed record NotOnHotDays(SkillCode Skill) : Reason;

/// <summary>Alone in a skill up to a weight, and this dog is heavier.</summary>
public sealed record TooHeavy(SkillCode Skill, int WeightKg, int UpToKg) : Reason;

/// <summary>Alone in a skill up to a weight, and this dog's weight is unknown.</summary>
public sealed record WeightUnknown(SkillCode Skill, int UpToKg) : Reason;

/// <summary>Alone in a skill only while a senior is in the building, and none is ticked in.</summary>
public sealed record NoSeniorIn(SkillCode Skill) : Reason;

/// <summary>A senior stands beside for the next grooms of this skill.</summary>
public sealed record Watched(SkillCode Skill, int Yet) : Reason;

/// <summary>Not ticked in today.</summary>
public sealed record NotInToday : Reason;

/// <summary>An incident of this person in a skill of this dog waits for review: not even with somebody beside.</summary>
public sealed record NotUntilReviewed(SkillCode Skill) : Reason;

/// <summary>Nobody who is in today could stand beside: none is alone in what is missing.</summary>
public sealed record NobodyToStandBeside : Reason;

/// <summary>The dog asks for a skill that the salon does not have.</summary>
public sealed record UnknownSkill(SkillCode Skill) : Reason;

/// <summary>Nobody knows the dog's age, and an old or very young dog asks for more.</summary>
public sealed record AgeUnknown : Reason;

/// <summary>The day may be hot and the newest reading is too old, or there is none; for dogs at risk in heat that means no.</summary>
public sealed record ReadingNeeded(DateTimeOffset? NewestAt) : Reason;

/// <summary>The room is at the stop line: nobody grooms, re-book.</summary>
public sealed record AtTheStopLine(int TenthsC, int FromTenthsC, bool IsAtRisk) : Reason;

/// <summary>No clearance covers enclosed drying of a dog with this hazard.</summary>
public sealed record NeverEnclosedDrying(SkillCode Hazard) : Reason;

/// <summary>No clearance covers a muzzle on a dog with breathing trouble, overheated, or likely to vomit.</summary>
public sealed record NeverMuzzled : Reason;

/// <summary>Loud or laboured breathing at rest: nobody grooms; phone the vet.</summary>
public sealed record BreathingTrouble : Reason;

/// <summary>No clearance covers this alone: two people, one of them a senior.</summary>
public sealed record TwoPeopleFor(SkillCode Skill) : Reason;

/// <summary>A pelted coat near skin folds: two people, one of them a senior.</summary>
public sealed record TwoPeopleForPeltedFolds : Reason;

/// <summary>Above the salon's limit nobody lifts the dog alone: two lift together.</summary>
public sealed record LiftTogether(int? WeightKg, int UpToKg) : Reason;

/// <summary>A hot day for this dog: water at fixed points, moving air, never enclosed; panting that does not settle means stop, cool, phone the vet.</summary>
public sealed record HotForThisDog(int TenthsC, bool IsAtRisk) : Reason;

/// <summary>A flat-faced dog never wears a sleeve muzzle.</summary>
public sealed record NeverASleeve : Reason;

/// <summary>Only the owner, or a senior whom the owner lets, writes modules.</summary>
public sealed record MayNotWriteModules : Reason;

/// <summary>Somebody else here could read the module before it is published, and nobody did.</summary>
public sealed record SecondReaderNeeded(Listed<PersonId> Could) : Reason;

/// <summary>Whoever wrote a module does not review it.</summary>
public sealed record ReviewsOwnModule : Reason;

/// <summary>Editions are counted on by one.</summary>
public sealed record NotTheNextEdition(int Edition, int Next) : Reason;

/// <summary>A safety change needs a day to catch up by, from the first to the last of these.</summary>
public sealed record CatchUpDayNeeded(DateOnly First, DateOnly Last) : Reason;

/// <summary>A module with something to put right is not published.</summary>
public sealed record ModuleToPutRight(int Findings) : Reason;

/// <summary>Words are longer than there is room for.</summary>
public sealed record TooManyWords(int Letters, int Most) : Reason;

/// <summary>Only whoever wrote a note, or the owner, takes it back.</summary>
public sealed record NotHerNote : Reason;

/// <summary>Every question of the edition needs a chance from 0 to 100; so many have none.</summary>
public sealed record QuestionsNotJudged(int Count) : Reason;
