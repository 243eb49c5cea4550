using System.Diagnostics;
using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Heat;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Quizzes.Amounts;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;

namespace Academy.Web.Wording;

// The word of every value of every enumeration, and a half-line of explanation where a form shows one.
public static partial class Say
{
    /// <summary>Every value of an enumeration as a choice: <c>Say.Picks&lt;Sign&gt;(Say.Word)</c>.</summary>
    public static IReadOnlyList<Pick> Picks<T>(Func<T, string> word, Func<T, string?>? note = null)
        where T : struct, Enum =>
        [.. Enum.GetValues<T>().Select(value => new Pick(value.ToString(), word(value), note?.Invoke(value)))];

    /// <summary>The five support levels as choices, each with its number.</summary>
    public static IReadOnlyList<Pick> Levels { get; } =
    [
        .. Enum.GetValues<SupportLevel>()
            .Select(level => new Pick(level.ToString(), Word(level), Note(level), Number: $"{(int)level}")),
    ];

    public static string Word(Role role) =>
        role switch
        {
            Role.Junior => "junior",
            Role.Senior => "senior",
            Role.Owner => "owner",
            _ => throw Unknown(role),
        };

    public static string Word(StandingKind standing) =>
        standing switch
        {
            StandingKind.Learning => "learning",
            StandingKind.Ready => "ready",
            StandingKind.Alone => "alone",
            StandingKind.CheckAgain => "check again",
            StandingKind.Lapsed => "lapsed",
            StandingKind.StoodDown => "stood down",
            _ => throw Unknown(standing),
        };

    public static string Note(StandingKind standing) =>
        standing switch
        {
            StandingKind.Learning => "grooms with a senior",
            StandingKind.Ready => "the rules hold, the owner decides",
            StandingKind.Alone => "without a senior watching",
            StandingKind.CheckAgain => "with a senior until the row is full again",
            StandingKind.Lapsed => "too long ago, or a module overdue: with a senior for now",
            StandingKind.StoodDown => "stopped until it is reviewed or lifted",
            _ => throw Unknown(standing),
        };

    /// <summary>The name under which the swatch book keeps a standing's shape.</summary>
    public static string Shape(StandingKind standing) => Word(standing).Replace(' ', '-');

    public static string Word(SkillKind kind) =>
        kind switch
        {
            SkillKind.Coat => "coat",
            SkillKind.Technique => "technique",
            SkillKind.Hazard => "hazard",
            _ => throw Unknown(kind),
        };

    public static string Word(CoatCondition condition) =>
        condition switch
        {
            CoatCondition.CombedThrough => "combed through",
            CoatCondition.SomeTangles => "some tangles",
            CoatCondition.Mats => "mats",
            CoatCondition.Pelted => "pelted",
            _ => throw Unknown(condition),
        };

    public static string Note(CoatCondition condition) =>
        condition switch
        {
            CoatCondition.CombedThrough => "a comb goes through to the skin",
            CoatCondition.SomeTangles => "the comb stops here and there",
            CoatCondition.Mats => "knots that a comb does not pass",
            CoatCondition.Pelted => "felted to the skin",
            _ => throw Unknown(condition),
        };

    public static string Word(Sign sign) =>
        sign switch
        {
            Sign.Panting => "panting",
            Sign.Trembling => "trembling",
            Sign.LipLicking => "lip licking, yawning, white of the eye",
            Sign.RedSkin => "red or sore skin",
            Sign.Limp => "limp or sore pads",
            Sign.SoreEyesOrEars => "sore eyes or ears",
            Sign.LumpOrWound => "lump or wound it came with",
            Sign.LaboredBreathing => "loud or laboured breathing at rest",
            Sign.VomitingOrLooseStool => "vomiting or loose stool",
            _ => throw Unknown(sign),
        };

    public static string Word(Consent consent) =>
        consent switch
        {
            Consent.ClipOff => "clip-off of a matted coat",
            Consent.DoubleCoatClip => "clip of a double coat",
            Consent.CoolingClip => "cooling clip",
            Consent.Muzzle => "muzzle",
            Consent.OldOrIll => "grooming an old or ill dog",
            _ => throw Unknown(consent),
        };

    public static string Note(Consent consent) =>
        consent switch
        {
            Consent.ClipOff => "what the skin below looks like is known only afterwards",
            Consent.DoubleCoatClip => "it may not grow back as it was",
            Consent.CoolingClip => "that it cools is not proved",
            Consent.Muzzle => "with breaks for panting",
            Consent.OldOrIll => "we stop when the dog has had enough",
            _ => throw Unknown(consent),
        };

    public static string Word(WelfareCheck check) =>
        check switch
        {
            WelfareCheck.ArrivalPads => "paws and pads on arrival",
            WelfareCheck.WaterBeforeBath => "water offered before the bath",
            WelfareCheck.WaterAfterBath => "water offered after the bath",
            WelfareCheck.WaterAfterGroom => "water offered after the groom",
            WelfareCheck.MuzzleOn => "muzzle on",
            WelfareCheck.MuzzleBreak => "muzzle off for a panting break",
            WelfareCheck.MuzzleOff => "muzzle off",
            _ => throw Unknown(check),
        };

    public static string Word(IncidentKind kind) =>
        kind switch
        {
            IncidentKind.SkinOpened => "skin opened through",
            IncidentKind.Nick => "nick or graze",
            IncidentKind.RedSkin => "red or sore skin",
            IncidentKind.NailQuick => "nail cut to the quick",
            IncidentKind.Burn => "burn",
            IncidentKind.EyeInjury => "eye injury",
            IncidentKind.HeatIllness => "heat illness",
            IncidentKind.FallOrHanging => "fall, or hanging from the table",
            IncidentKind.Escape => "escape",
            IncidentKind.LeftInDryer => "left unwatched in a closed dryer",
            IncidentKind.Bite => "bite",
            IncidentKind.WrongDogOrClip => "wrong dog or wrong clip",
            IncidentKind.Other => "something else",
            _ => throw Unknown(kind),
        };

    public static string Word(Severity severity) =>
        severity switch
        {
            Severity.NearMiss => "near miss",
            Severity.Slight => "slight",
            Severity.Moderate => "moderate",
            Severity.Serious => "serious",
            _ => throw Unknown(severity),
        };

    public static string Note(Severity severity) =>
        severity switch
        {
            Severity.NearMiss => "harmed nobody; it never lowers anything",
            Severity.Slight => "little or no care needed",
            Severity.Moderate => "cared for here, or a call to the vet",
            Severity.Serious => "a vet had to treat it, or the dog was in danger",
            _ => throw Unknown(severity),
        };

    public static string Word(BodySite site) =>
        site switch
        {
            BodySite.None => "not on the body",
            BodySite.Ear => "ear",
            BodySite.EyeOrFace => "eye or face",
            BodySite.Mouth => "tongue or mouth",
            BodySite.Neck => "neck or throat",
            BodySite.BackOrSide => "back or side",
            BodySite.BellyOrGroin => "belly, groin or genitals",
            BodySite.FlankOrArmpit => "flank fold or armpit",
            BodySite.Leg => "leg",
            BodySite.Foot => "foot, pad or nail",
            BodySite.Tail => "tail or under it",
            _ => throw Unknown(site),
        };

    public static string Word(VetContact vet) =>
        vet switch
        {
            VetContact.NotNeeded => "not needed",
            VetContact.Phoned => "phoned",
            VetContact.Seen => "dog seen by the vet",
            _ => throw Unknown(vet),
        };

    public static string Word(SupportLevel level) =>
        level switch
        {
            SupportLevel.SeniorDidIt => "Senior did it",
            SupportLevel.HandsOn => "Hands on together",
            SupportLevel.TalkedThrough => "Talked through",
            SupportLevel.StoodBy => "Stood by, not needed",
            SupportLevel.NotNeeded => "No senior needed",
            _ => throw Unknown(level),
        };

    public static string Note(SupportLevel level) =>
        level switch
        {
            SupportLevel.SeniorDidIt => "the junior watched",
            SupportLevel.HandsOn => "you took the tools at least once",
            SupportLevel.TalkedThrough => "your hands stayed off, your voice did not",
            SupportLevel.StoodBy => "you were there and said almost nothing",
            SupportLevel.NotNeeded => "you could have been in another room",
            _ => throw Unknown(level),
        };

    public static string Word(Criterion criterion) =>
        criterion switch
        {
            Criterion.Handling => "handling and restraint",
            Criterion.Preparation => "preparation",
            Criterion.Tools => "tools and blades",
            Criterion.SkinSafety => "skin safety",
            Criterion.Finish => "finish",
            Criterion.Comfort => "dog's comfort",
            _ => throw Unknown(criterion),
        };

    public static string Note(Criterion criterion) =>
        criterion switch
        {
            Criterion.Handling => "a secure hold, the dog never left on the table",
            Criterion.Preparation => "looked over first; clean, dry and combed to the skin",
            Criterion.Tools => "right blade for the place, cool, scissors closed between cuts",
            Criterion.SkinSafety => "skin flat, folds and edges covered, nothing hot; must be met",
            Criterion.Finish => "suits the coat and what was agreed",
            Criterion.Comfort => "saw stress early and answered it, water and breaks; must be met",
            _ => throw Unknown(criterion),
        };

    public static string Word(Mark mark) =>
        mark switch
        {
            Mark.Unset => "not chosen",
            Mark.Met => "met",
            Mark.NotYet => "not yet",
            Mark.NotSeen => "not seen",
            _ => throw Unknown(mark),
        };

    public static string Word(AgeByLook age) =>
        age switch
        {
            AgeByLook.NotSaid => "not said",
            AgeByLook.VeryYoung => "looks very young",
            AgeByLook.Grown => "looks grown, not old",
            AgeByLook.Elderly => "looks old",
            _ => throw Unknown(age),
        };

    public static string Word(WeightClass weight) =>
        weight switch
        {
            WeightClass.Under10 => "under 10 kg",
            WeightClass.From10 => "10 to 20 kg",
            WeightClass.From20 => "20 to 30 kg",
            WeightClass.From30 => "30 to 40 kg",
            WeightClass.From40 => "40 to 50 kg",
            WeightClass.From50 => "50 kg or more",
            _ => throw Unknown(weight),
        };

    public static string Word(StepKind step) =>
        step switch
        {
            StepKind.Alone => "groomed alone",
            StepKind.Watched => "groomed with a senior, not rated",
            StepKind.Rated => "groomed with a senior, rated",
            StepKind.Inspected => "groomed alone, inspected",
            StepKind.Elsewhere => "worked elsewhere",
            StepKind.Declared => "experience declared",
            StepKind.Cleared => "cleared",
            StepKind.StoodDown => "stood down",
            StepKind.Lifted => "stop lifted",
            _ => throw Unknown(step),
        };

    public static string Word(Verdict verdict) =>
        verdict switch
        {
            Verdict.Suitable => "suited",
            Verdict.Unsuitable => "needed fixing",
            Verdict.Critical => "critical incident",
            _ => throw Unknown(verdict),
        };

    public static string Word(Place place) =>
        place switch
        {
            Place.Alone => "alone",
            Place.Beside => "with somebody beside",
            Place.Not => "not this dog",
            _ => throw Unknown(place),
        };

    public static string Word(HeatState heat) =>
        heat switch
        {
            HeatState.Unknown => "no reading that is new enough",
            HeatState.NotAsked => "no reading asked today",
            HeatState.Under => "under the salon’s limits",
            HeatState.Hot => "hot day",
            HeatState.Stop => "at the stop line",
            _ => throw Unknown(heat),
        };

    public static string Word(StudyNeed need) =>
        need switch
        {
            StudyNeed.Overdue => "overdue",
            StudyNeed.DueSoon => "due soon",
            StudyNeed.ToStudy => "to study",
            StudyNeed.Passed => "passed, nothing due",
            _ => throw Unknown(need),
        };

    public static string Word(ModuleState state) =>
        state switch
        {
            ModuleState.Current => "passed",
            ModuleState.NotPassed => "not passed yet",
            ModuleState.EditionTooOld => "passed before its last safety change",
            ModuleState.RefresherOverdue => "refresher overdue",
            ModuleState.RefresherFailed => "refresher twice not passed",
            ModuleState.NotRenewed => "not renewed this spring",
            ModuleState.NotInLibrary => "not among the salon's modules",
            _ => throw Unknown(state),
        };

    public static string Word(ReminderKind kind) =>
        kind switch
        {
            ReminderKind.Refresher => "refresher",
            ReminderKind.CatchUp => "quiz on what changed",
            ReminderKind.Renewal => "quiz of the season",
            _ => throw Unknown(kind),
        };

    public static string Word(QuestionDoubt doubt) =>
        doubt switch
        {
            QuestionDoubt.CheckTheKey => "check which answer is marked right",
            QuestionDoubt.WrongChoiceDrawsTheBest => "a wrong choice draws those who know the rest",
            QuestionDoubt.Hard => "hard: fewer than 30 in 100 have it right",
            QuestionDoubt.TellsLittle => "hardly tells who knows the rest",
            QuestionDoubt.ChoiceNobodyBelieves => "a wrong choice that hardly anybody makes",
            QuestionDoubt.Easy => "easy: more than 95 in 100 have it right",
            _ => throw Unknown(doubt),
        };

    public static string Word(Measure measure) =>
        measure switch
        {
            Measure.Nothing => "a bare number",
            Measure.Length => "length",
            Measure.Temperature => "temperature",
            Measure.Weight => "weight",
            Measure.Volume => "volume",
            Measure.Duration => "time",
            Measure.Share => "share",
            _ => throw Unknown(measure),
        };

    public static string Word(WayBack back) =>
        back switch
        {
            WayBack.None => "not on the way back",
            WayBack.Short => "on the short way back",
            WayBack.Long => "on the long way back",
            WayBack.Whole => "on the whole way back",
            _ => throw Unknown(back),
        };

    public static string Word(DriftSign drift) =>
        drift switch
        {
            DriftSign.Steady => "steady",
            DriftSign.Watch => "watch",
            DriftSign.CheckAgain => "check again",
            _ => throw Unknown(drift),
        };

    public static string Word(WordsFor words) =>
        words switch
        {
            WordsFor.NotYet => "Write what to practise next, or tap a phrase: something is “not yet”.",
            WordsFor.Correction => "Write why this sign-off is corrected.",
            WordsFor.Exception => "Write why you decide against the rules.",
            WordsFor.Refusal => "Write why not yet, and what would change it.",
            WordsFor.StandDown => "Write why this is stopped.",
            WordsFor.Lift => "Write why the stop is lifted.",
            WordsFor.Declaration => "Write what the experience is: where, how long, who has seen it.",
            WordsFor.Source => "Write where the work elsewhere is known from.",
            WordsFor.Change => "Write what changed, for those who passed the edition before.",
            WordsFor.Note => "Write how it is done here.",
            WordsFor.Dispute => "Write what you see differently.",
            WordsFor.Answer => "Write your answer to the dispute.",
            WordsFor.LateCounts => "Write why this late sign-off counts.",
            WordsFor.Incident => "Write what happened.",
            WordsFor.Review => "Write what the review found.",
            WordsFor.Name => "Write a name.",
            WordsFor.Erasure => "Write why these words are erased, without repeating them.",
            WordsFor.SpokenAbout => "Write what you spoke about, and what follows.",
            WordsFor.EndedEarly => "Write why the groom ended early, or tap a phrase.",
            _ => throw Unknown(words),
        };

    private static UnreachableException Unknown<T>(T value)
        where T : struct, Enum => new($"No word for {typeof(T).Name} {value}.");
}
