using Academy.Competence.Facts;
using Academy.Storage.Ledgers;

namespace Academy.Web.Wording;

// What was kept, as the ledger and a person's history tell it.
public static partial class Say
{
    private static readonly Dictionary<Type, string> FactKinds = new()
    {
        [typeof(SalonOpened)] = "salon opened",
        [typeof(SalonDescribed)] = "salon and vet described",
        [typeof(HouseRulesSet)] = "house rules set",
        [typeof(PersonDescribed)] = "person described",
        [typeof(PersonLeft)] = "person left",
        [typeof(PersonCameBack)] = "person came back",
        [typeof(PresenceTicked)] = "who is in",
        [typeof(ExperienceDeclared)] = "experience declared",
        [typeof(WorkElsewhere)] = "work elsewhere",
        [typeof(DogDescribed)] = "dog described",
        [typeof(SkillDescribed)] = "skill described",
        [typeof(ThresholdSet)] = "threshold set",
        [typeof(GroomStarted)] = "groom started",
        [typeof(GroomAbandoned)] = "groom taken back",
        [typeof(GroomLogged)] = "groom logged",
        [typeof(GroomFlagged)] = "groom flagged",
        [typeof(FlagSpokenAbout)] = "flag spoken about",
        [typeof(SignedOff)] = "sign-off",
        [typeof(LateSignOffAdmitted)] = "late sign-off counted",
        [typeof(SignOffDisputed)] = "sign-off disputed",
        [typeof(DisputeAnswered)] = "dispute answered",
        [typeof(IncidentReported)] = "incident reported",
        [typeof(IncidentReviewed)] = "incident reviewed",
        [typeof(ComplaintUpheld)] = "complaint upheld",
        [typeof(ClearanceGiven)] = "clearance given",
        [typeof(ClearanceRefused)] = "clearance refused",
        [typeof(StoodDown)] = "stood down",
        [typeof(StandDownLifted)] = "stand-down lifted",
        [typeof(WordsErased)] = "words erased",
        [typeof(RoomRead)] = "room reading",
        [typeof(AttemptHandedIn)] = "quiz handed in",
        [typeof(ModuleEditionSeen)] = "module edition seen",
        [typeof(ModulePublished)] = "module edition published",
        [typeof(ModuleNoted)] = "note to a module",
        [typeof(ModuleNoteTakenBack)] = "note to a module taken back",
        [typeof(QuestionsJudged)] = "questions judged",
    };

    private static readonly Dictionary<string, string> FactKindsByCode = FactForms.Known.ToDictionary(
        form => form.Code,
        form => FactKinds[form.Type],
        StringComparer.Ordinal
    );

    /// <summary>What kind of thing was kept.</summary>
    public static string Kind(Fact fact) => FactKinds[fact.GetType()];

    /// <summary>The same of a code as the ledger writes it; a code of a later version reads as itself.</summary>
    public static string Kind(string code) => FactKindsByCode.GetValueOrDefault(code, code);

    /// <summary>A decision about one person and one skill as a sentence; null for facts that are none.</summary>
    public static string? Decision(Fact fact, Names names) =>
        fact switch
        {
            ExperienceDeclared told =>
                $"Experience declared from {names.Time.Date(told.On)}, under version {told.ThresholdVersion}.",
            WorkElsewhere told => $"{Counts.Of(told.Grooms, "groom")} elsewhere on {names.Time.Date(told.On)}, for recency only.",
            ClearanceGiven given => OfClearanceGiven(given, names),
            ClearanceRefused => "Not yet, said the owner.",
            StoodDown => "Stood down.",
            StandDownLifted => "The stop was lifted.",
            _ => null,
        };

    private static string OfClearanceGiven(ClearanceGiven given, Names names)
    {
        var limits = Limits(given.Limits, names);
        return $"Cleared to do it alone, under version {given.ThresholdVersion}"
            + (given.IsException ? ", against the rules" : "")
            + (limits.Count == 0 ? "." : $"; {string.Join(", ", limits)}.");
    }
}
