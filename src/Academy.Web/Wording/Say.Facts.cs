using System.Diagnostics;
using Academy.Competence.Facts;

namespace Academy.Web.Wording;

// What was kept, as the ledger and a person's history tell it.
public static partial class Say
{
    /// <summary>What kind of thing was kept.</summary>
    public static string Kind(Fact fact) =>
        fact switch
        {
            SalonOpened => "salon opened",
            SalonDescribed => "salon and vet described",
            HouseRulesSet => "house rules set",
            PersonDescribed => "person described",
            PersonLeft => "person left",
            PersonCameBack => "person came back",
            PresenceTicked => "who is in",
            ExperienceDeclared => "experience declared",
            WorkElsewhere => "work elsewhere",
            DogDescribed => "dog described",
            SkillDescribed => "skill described",
            ThresholdSet => "threshold set",
            GroomStarted => "groom started",
            GroomAbandoned => "groom taken back",
            GroomLogged => "groom logged",
            SignedOff => "sign-off",
            LateSignOffAdmitted => "late sign-off counted",
            SignOffDisputed => "sign-off disputed",
            DisputeAnswered => "dispute answered",
            IncidentReported => "incident reported",
            IncidentReviewed => "incident reviewed",
            ComplaintUpheld => "complaint upheld",
            ClearanceGiven => "clearance given",
            ClearanceRefused => "clearance refused",
            StoodDown => "stood down",
            StandDownLifted => "stand-down lifted",
            RoomRead => "room reading",
            AttemptHandedIn => "quiz handed in",
            ModuleEditionSeen => "module edition seen",
            _ => throw new UnreachableException($"No words for {fact.GetType().Name}."),
        };

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
