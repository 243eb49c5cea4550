using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;

namespace Academy.Competence.SignOffs;

/// <summary>What a senior has filled in; not judged yet.</summary>
/// <param name="Id">The id of the sign-off to be, made once.</param>
/// <param name="Subject">Whose part is judged.</param>
/// <param name="HasWatched">Whether she says that she really watched (or inspected the finished dog).</param>
/// <param name="Level">The support level; null while unset.</param>
/// <param name="Criteria">The six criteria.</param>
/// <param name="NotSuitable">Techniques and hazards marked as not suitable.</param>
/// <param name="Phrases">Codes of quick phrases.</param>
/// <param name="ToJunior">Words.</param>
/// <param name="Replaces">The sign-off corrected.</param>
/// <param name="Why">Why.</param>
public sealed record SignOffDraft(
    SignOffId Id,
    PersonId Subject,
    bool HasWatched,
    SupportLevel? Level,
    Criteria Criteria,
    Listed<SkillCode> NotSuitable,
    Listed<string> Phrases,
    Words ToJunior,
    SignOffId? Replaces = null,
    Words Why = default
);

/// <summary>What a senior brings to a sign-off.</summary>
/// <param name="Person">Who signs.</param>
/// <param name="Standings">Her standing in every skill of the groom at this moment.</param>
/// <param name="DaysIn">Days on which she was ticked in, around the groom.</param>
public sealed record Signer(
    Person Person,
    IReadOnlyDictionary<SkillCode, StandingKind> Standings,
    IReadOnlyCollection<DateOnly> DaysIn
);

/// <summary>What a sign-off would count for, shown before it is saved.</summary>
/// <param name="Verdict">What the whole groom comes to.</param>
/// <param name="Counted">Skills it counts for.</param>
/// <param name="NotCounted">Skills it does not count for, with why.</param>
public sealed record SignOffPreview(Verdict Verdict, Listed<CountedFor> Counted, Listed<SignerNotAloneIn> NotCounted);

/// <summary>Judging a groom: who may, what counts as suitable for which skill, and until when.</summary>
public static class SigningOff
{
    /// <summary>Hours after its end in which a groom is rated on time.</summary>
    public const int OnTimeHours = 72;

    /// <summary>Days after its end after which a sign-off is late whatever the senior's working days.</summary>
    public const int AtMostDays = 7;

    /// <summary>The sign-off as a fact, or every reason against it at once.</summary>
    public static Decision Decide(
        SignOffDraft draft,
        GroomStory story,
        Signer signer,
        SkillKinds kinds,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        var reasons = Against(draft, story, signer, now, zone);
        return Decision.Of(reasons, () => [new SignedOff(Write(draft, story, signer, kinds, now, zone))]);
    }

    /// <summary>What it would count for, as far as it is filled in.</summary>
    public static SignOffPreview Preview(SignOffDraft draft, Groom groom, Signer signer, SkillKinds kinds)
    {
        var skills = groom.SkillsOf(draft.Subject).ToListed();
        var level = draft.Level ?? SupportLevel.SeniorDidIt;
        return new SignOffPreview(
            VerdictOf(level, draft.Criteria, draft.NotSuitable, groom.Coat, isCoat: true),
            skills
                .Where(IsEntitled)
                .Select(skill => new CountedFor(
                    skill,
                    VerdictOf(level, draft.Criteria, draft.NotSuitable, skill, kinds.IsCoat(skill))
                ))
                .ToListed(),
            skills.Where(skill => !IsEntitled(skill)).Select(skill => new SignerNotAloneIn(skill, StandingIn(skill))).ToListed()
        );

        StandingKind StandingIn(SkillCode skill) =>
            signer.Standings.TryGetValue(skill, out var kind) ? kind : StandingKind.Learning;
        bool IsEntitled(SkillCode skill) => Standing.MayJudge(signer.Person, StandingIn(skill));
    }

    /// <summary>
    /// The story as it would stand if this were kept now, whatever is against it: for showing what it would do. A level not
    /// chosen yet counts as 1, a criterion not set yet as not met.
    /// </summary>
    public static GroomStory Foresee(
        SignOffDraft draft,
        GroomStory story,
        Signer signer,
        SkillKinds kinds,
        DateTimeOffset now,
        TimeZoneInfo zone
    ) => story with { SignOffs = story.SignOffs.With(Write(draft, story, signer, kinds, now, zone)) };

    /// <summary>What a sign-off says of one skill.</summary>
    /// <remarks>
    /// The coat takes the result of the whole groom: level 4 or 5, skin safety and the dog's comfort met, nothing else "not yet".
    /// A technique or hazard counts as suitable unless the senior marked it otherwise, but never where she had to step in (level 1
    /// to 3) or where skin safety or the dog's comfort was not met: a coat's finish may be "not yet" and the nails still be right.
    /// </remarks>
    public static Verdict VerdictOf(
        SupportLevel level,
        Criteria criteria,
        Listed<SkillCode> notSuitable,
        SkillCode skill,
        bool isCoat
    )
    {
        var isSafeAndUnaided = level >= SupportLevel.StoodBy && criteria.IsSafe;
        var isSuitable = isSafeAndUnaided && (isCoat ? !criteria.HasNotYet : !notSuitable.Contains(skill));
        return isSuitable ? Verdict.Suitable : Verdict.Unsuitable;
    }

    /// <summary>
    /// The moment after which a sign-off is late: 72 hours after the groom's end, or the end of the senior's next working day if
    /// that is later, at most 7 days. While her next working day is not known the 7 days hold.
    /// </summary>
    public static DateTimeOffset OnTimeUntil(
        DateTimeOffset endedAt,
        IReadOnlyCollection<DateOnly> daysIn,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        var atLeast = endedAt.AddHours(OnTimeHours);
        var atMost = endedAt.AddDays(AtMostDays);
        var groomed = SalonDay.Of(endedAt, zone);
        var next = daysIn.Where(day => day > groomed && day <= SalonDay.Of(now, zone)).Order().Cast<DateOnly?>().FirstOrDefault();
        var endOfNext = next is { } day ? SalonDay.End(day, zone) : atMost;
        var until = endOfNext > atLeast ? endOfNext : atLeast;
        return until < atMost ? until : atMost;
    }

    private static IEnumerable<Reason> Against(
        SignOffDraft draft,
        GroomStory story,
        Signer signer,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        var person = signer.Person;
        if (!person.WorksOn(SalonDay.Of(now, zone)))
            yield return new NotWorkingHere(person.Id);
        if (!person.MayJudgeByRole)
            yield return new SeniorOrOwnerOnly(person.Role);
        if (story.Groom.Doers.Contains(person.Id))
            yield return new OwnWork();
        if (!story.Groom.Doers.Contains(draft.Subject))
            yield return new DidNoPart(draft.Subject);
        if (story.Groom.EndedAt > now)
            yield return new GroomNotEnded();
        if (!draft.HasWatched)
            yield return new SignerDidNotWatch();
        if (
            person.MayJudgeByRole
            && !story
                .Groom.SkillsOf(draft.Subject)
                .Any(skill => signer.Standings.TryGetValue(skill, out var kind) && kind == StandingKind.Alone)
        )
            yield return new SignerAloneInNone();
        foreach (var reason in AgainstForm(draft).Concat(AgainstReplacing(draft, story)))
            yield return reason;
    }

    private static IEnumerable<Reason> AgainstForm(SignOffDraft draft)
    {
        if (draft.Level is null)
            yield return new LevelNotChosen();
        foreach (var (criterion, mark) in draft.Criteria.All)
            if (mark == Mark.Unset)
                yield return new CriterionNotSet(criterion);
        if ((draft.Criteria.HasNotYet || !draft.NotSuitable.IsEmpty) && draft.ToJunior.IsEmpty && draft.Phrases.IsEmpty)
            yield return new WordsNeeded(WordsFor.NotYet);
    }

    private static IEnumerable<Reason> AgainstReplacing(SignOffDraft draft, GroomStory story)
    {
        var inForce = story.SignOffOf(draft.Subject);
        if (draft.Replaces is null && inForce is not null)
            yield return new AlreadySignedOff(inForce.Id);
        if (draft.Replaces is { } replaced && inForce?.Id != replaced)
            yield return new NotTheSignOffInForce();
        if (draft.Replaces is not null && draft.Why.IsEmpty)
            yield return new WordsNeeded(WordsFor.Correction);
    }

    private static SignOff Write(
        SignOffDraft draft,
        GroomStory story,
        Signer signer,
        SkillKinds kinds,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        var groom = story.Groom;
        var preview = Preview(draft, groom, signer, kinds);
        var isLate = story.SignOffOf(draft.Subject)?.IsLate ?? now > OnTimeUntil(groom.EndedAt, signer.DaysIn, now, zone);
        return new SignOff(
            draft.Id,
            groom.Id,
            draft.Subject,
            signer.Person.Id,
            now,
            draft.Level ?? SupportLevel.SeniorDidIt,
            draft.Criteria,
            draft.NotSuitable,
            preview.Counted,
            preview.NotCounted.Select(not => not.Skill).ToListed(),
            IsInspection: groom.Watcher is null,
            isLate,
            InsteadOf: groom.Watcher is { } named && named != signer.Person.Id ? named : null,
            draft.Replaces,
            draft.Why,
            draft.Phrases,
            draft.ToJunior
        );
    }
}
