using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;

namespace Academy.Storage.Tests.Ledgers;

/// <summary>At least one of each fact, with everything filled in, and those with gaps also with the gaps. Words say that they are typed.</summary>
internal static class FactSamples
{
    private static readonly PersonId Pim = new(Id(1));
    private static readonly PersonId Rosa = new(Id(2));
    private static readonly DogId Biscuit = new(Id(3));
    private static readonly GroomId Groom = new(Id(4));
    private static readonly SignOffId SignOff = new(Id(5));
    private static readonly DecisionId Decision = new(Id(6));
    private static readonly IncidentId Incident = new(Id(7));
    private static readonly DateOnly Day = new(2026, 2, 28);
    private static readonly DateTimeOffset At = new(2026, 2, 28, 17, 45, 12, 345, TimeSpan.FromHours(1));
    private static readonly DateTimeOffset AtATick = At.AddTicks(1);

    private static Groom WholeGroom { get; } =
        new(
            Groom,
            Biscuit,
            Pim,
            Rosa,
            At.AddHours(-2),
            At,
            "Terrier (wire)",
            SkillBook.Wire,
            SkillBook.Silky,
            CoatCondition.SomeTangles,
            Pim,
            [new Part(SkillBook.HandStripping, Pim), new Part(SkillBook.Nails, Rosa)],
            ["10", "7F"],
            [SkillBook.Nervous],
            [Consent.ClipOff, Consent.OldOrIll],
            [new CheckMade(WelfareCheck.ArrivalPads, At.AddHours(-2)), new CheckMade(WelfareCheck.MuzzleOff, At)],
            [Sign.LipLicking],
            new RoomReading(At.AddHours(-1), 248, 55),
            EndedEarly: true,
            ["calm-throughout"],
            Typed("notes with ë, € and a dog \U0001F415")
        );

    private static SignOff WholeSignOff { get; } =
        new(
            SignOff,
            Groom,
            Pim,
            Rosa,
            At,
            SupportLevel.StoodBy,
            new Criteria(Mark.Met, Mark.NotSeen, Mark.NotYet, Mark.Met, Mark.Unset, Mark.Met),
            [SkillBook.Nails],
            [new CountedFor(SkillBook.Wire, Verdict.Suitable), new CountedFor(SkillBook.Nails, Verdict.Unsuitable)],
            [SkillBook.Silky],
            IsInspection: true,
            IsLate: true,
            InsteadOf: Rosa,
            Replaces: new SignOffId(Id(10)),
            Typed("why"),
            ["finish-the-feet"],
            Typed("to the junior")
        );

    public static IReadOnlyDictionary<string, Fact> All { get; } =
        new Dictionary<string, Fact>(StringComparer.Ordinal)
        {
            ["SalonOpened"] = new SalonOpened(Typed("name"), "Europe/Amsterdam"),
            ["SalonDescribed"] = new SalonDescribed(Typed("name"), Typed("vet"), Typed("telephone")),
            ["SalonDescribed without a vet"] = new SalonDescribed(Typed("name"), Words.None, default),
            ["HouseRulesSet"] = new HouseRulesSet(
                new HouseRules { ElderlyFromYears = 9, CriticalKinds = [IncidentKind.Burn, IncidentKind.Bite] }
            ),
            ["PersonDescribed"] = new PersonDescribed(
                Pim,
                Typed("name"),
                Role.Senior,
                Day,
                Day.AddYears(1),
                IsUnder18: true,
                IsDeputy: true
            ),
            ["PersonDescribed who writes modules"] = new PersonDescribed(
                Pim,
                Typed("name"),
                Role.Senior,
                Day,
                EndsOn: null,
                IsUnder18: false,
                IsDeputy: false,
                WritesModules: true
            ),
            ["PersonDescribed without an end"] = new PersonDescribed(
                Pim,
                new Words("* typed"),
                Role.Junior,
                Day,
                EndsOn: null,
                IsUnder18: false,
                IsDeputy: false
            ),
            ["PersonLeft"] = new PersonLeft(Pim, Day),
            ["PersonCameBack"] = new PersonCameBack(Pim, Day),
            ["PresenceTicked"] = new PresenceTicked(Pim, Day, IsIn: true),
            ["ExperienceDeclared"] = new ExperienceDeclared(Decision, Rosa, SkillBook.Wire, Day, 3, Typed("reason")),
            ["WorkElsewhere"] = new WorkElsewhere(Decision, Pim, SkillBook.Wool, Day, 4, Typed("source")),
            ["DogDescribed"] = new DogDescribed(
                Biscuit,
                Typed("name"),
                "Terrier (wire)",
                SkillBook.Wire,
                SkillBook.Silky,
                [SkillBook.Nervous, SkillBook.Heart],
                new DateOnly(2020, 2, 29),
                AgeByLook.Grown,
                12,
                Typed("client"),
                IsGone: true
            ),
            ["DogDescribed hardly known"] = new DogDescribed(
                Biscuit,
                Typed("name"),
                "cross",
                Coat: null,
                SecondCoat: null,
                [],
                BornOn: null,
                AgeByLook.NotSaid,
                WeightKg: null,
                Words.None,
                IsGone: false
            ),
            ["SkillDescribed"] = new SkillDescribed(
                SkillBook.DeMatting,
                SkillKind.Technique,
                "de-matting",
                [new("blades"), new("mats")],
                IsRetired: true
            ),
            ["ThresholdSet"] = new ThresholdSet(
                new Threshold(SkillBook.Wire, 2, Day, new RowProfile(.07, 5, 16), 3, 2, 3, 180, onFullCoat: true, isOn: false)
            ),
            ["ThresholdSet for modules only"] = new ThresholdSet(DefaultThresholds.For(SkillBook.HotDay, Day)),
            ["GroomStarted"] = new GroomStarted(Groom, Biscuit, Pim, Rosa, At),
            ["GroomStarted alone"] = new GroomStarted(Groom, Biscuit, Pim, Watcher: null, AtATick),
            ["GroomAbandoned"] = new GroomAbandoned(Groom, Typed("why")),
            ["GroomLogged"] = new GroomLogged(WholeGroom),
            ["GroomLogged with gaps"] = new GroomLogged(
                WholeGroom with
                {
                    Watcher = null,
                    EndedAt = AtATick,
                    SecondCoat = null,
                    WholeFinishBy = null,
                    Parts = [],
                    Room = null,
                    Notes = Words.None,
                }
            ),
            ["WordsErased"] = new WordsErased(17, Typed("why")),
            ["GroomFlagged"] = new GroomFlagged(Groom, Pim, [SkillBook.Wire, SkillBook.HandStripping]),
            ["GroomFlagged taken back"] = new GroomFlagged(Groom, Pim, []),
            ["FlagSpokenAbout"] = new FlagSpokenAbout(Groom, Pim, Typed("says")),
            ["SignedOff"] = new SignedOff(WholeSignOff),
            ["SignedOff for the first time"] = new SignedOff(
                WholeSignOff with
                {
                    InsteadOf = null,
                    Replaces = null,
                    Why = default,
                    IsLate = false,
                    IsInspection = false,
                }
            ),
            ["LateSignOffAdmitted"] = new LateSignOffAdmitted(Groom, SignOff, Typed("reason")),
            ["SignOffDisputed"] = new SignOffDisputed(Groom, SignOff, Pim, Typed("says")),
            ["DisputeAnswered"] = new DisputeAnswered(Groom, SignOff, IsOverturned: true, OwnerWasJudge: true, Typed("says")),
            ["IncidentReported"] = new IncidentReported(
                new Incident(
                    Incident,
                    Groom,
                    Pim,
                    Rosa,
                    At,
                    AtATick,
                    IncidentKind.SkinOpened,
                    Severity.Moderate,
                    BodySite.FlankOrArmpit,
                    [SkillBook.BodyScissoring],
                    VetContact.Seen,
                    IsCritical: true,
                    Typed("what happened"),
                    Typed("what was done")
                )
            ),
            ["IncidentReviewed"] = new IncidentReviewed(
                Groom,
                new IncidentReview(Incident, Rosa, At, Pim, IsTechnique: true, Typed("found"))
            ),
            ["IncidentReviewed nobody responsible"] = new IncidentReviewed(
                Groom,
                new IncidentReview(Incident, Rosa, At, Responsible: null, IsTechnique: false, Typed("found"))
            ),
            ["ComplaintUpheld"] = new ComplaintUpheld(Groom, Pim, [SkillBook.Wire, SkillBook.Nails], Typed("says")),
            ["ClearanceGiven"] = new ClearanceGiven(
                Decision,
                new DecisionId(Id(8)),
                Pim,
                SkillBook.Wire,
                At,
                2,
                new Limits(Day, NotOnHotDays: true, UpToKg: 20, OnlyWithSeniorIn: true),
                IsException: true,
                Typed("reason")
            ),
            ["ClearanceGiven without limits"] = new ClearanceGiven(
                Decision,
                Decision,
                Pim,
                SkillBook.Wire,
                At,
                2,
                Limits.None,
                IsException: false,
                Words.None
            ),
            ["ClearanceRefused"] = new ClearanceRefused(Decision, Pim, SkillBook.Wire, Typed("says")),
            ["StoodDown"] = new StoodDown(Decision, Pim, SkillBook.Wire, At, Typed("reason")),
            ["StandDownLifted"] = new StandDownLifted(Decision, Pim, SkillBook.Wire, At, Typed("reason")),
            ["RoomRead"] = new RoomRead(new RoomReading(At, 253, 61), "bathroom"),
            ["RoomRead by thermometer"] = new RoomRead(new RoomReading(AtATick, -5, HumidityPct: null), ""),
            ["AttemptHandedIn"] = new AttemptHandedIn(
                new AttemptId(Id(9)),
                Pim,
                new ModuleName("heat-stroke"),
                3,
                "sha256:0123",
                IsRefresher: true,
                int.MinValue,
                At,
                AtATick,
                ["q1:0,2", "q2:"],
                7,
                8,
                ["q2"],
                HasPassed: true,
                Rosa
            ),
            ["ModuleEditionSeen"] = new ModuleEditionSeen(
                new ModuleName("heat-stroke"),
                3,
                2,
                180,
                RenewedEachSpring: true,
                "sha256:0123"
            ),
            ["ModuleEditionSeen without refresher"] = new ModuleEditionSeen(
                new ModuleName("blades"),
                1,
                1,
                RefresherDays: null,
                RenewedEachSpring: false,
                "sha256:4567"
            ),
            ["ModuleEditionSeen with a day to catch up by"] = new ModuleEditionSeen(
                new ModuleName("blades"),
                2,
                2,
                90,
                RenewedEachSpring: false,
                "sha256:89ab",
                Day
            ),
            ["ModuleNoted"] = new ModuleNoted(new NoteId(Id(11)), new ModuleName("blades"), Rosa, Typed("note")),
            ["ModuleNoteTakenBack"] = new ModuleNoteTakenBack(new NoteId(Id(11)), new ModuleName("blades"), Rosa),
            ["QuestionsJudged"] = new QuestionsJudged(new ModuleName("blades"), "sha256:89ab", Rosa, ["q1:85", "q2:100"]),
            ["AttemptHandedIn to catch up"] = new AttemptHandedIn(
                new AttemptId(Id(9)),
                Pim,
                new ModuleName("heat-stroke"),
                3,
                "sha256:0123",
                IsRefresher: false,
                7,
                At,
                At,
                ["q1:0"],
                1,
                1,
                [],
                HasPassed: true,
                ReadOutBy: null,
                ["q1"],
                IsCatchUp: true,
                RightAsked: 1
            ),
            ["ModulePublished"] = new ModulePublished(
                new ModuleName("blades"),
                2,
                "sha256:89ab",
                Rosa,
                Pim,
                IsSafetyCritical: true,
                Typed("change")
            ),
            ["ModulePublished beside the library's"] = new ModulePublished(
                new ModuleName("blades"),
                3,
                "sha256:4567",
                Rosa,
                Pim,
                IsSafetyCritical: false,
                Typed("change"),
                LibraryHash: "sha256:0123"
            ),
            ["ModulePublished without a second reader"] = new ModulePublished(
                new ModuleName("blades"),
                1,
                "sha256:cdef",
                Rosa,
                ReviewedBy: null,
                IsSafetyCritical: false,
                Words.None
            ),
        };

    private static Words Typed(string what) => new($"{what} as typed");

    private static Guid Id(int number) => new($"0198c0de-0000-7000-8000-{number:x12}");
}
