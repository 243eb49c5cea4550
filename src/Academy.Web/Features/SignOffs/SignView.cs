using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.SignOffs;

/// <summary>What saving will do, in view beside the button.</summary>
/// <param name="Will">One line: "Suited: wool 12 to 13 of 17".</param>
/// <param name="Headline">"Suited", "Needed fixing", "Not complete yet".</param>
/// <param name="Because">Why it would not suit.</param>
/// <param name="Rows">What each skill would come to.</param>
/// <param name="NotCounted">For which skills it does not count, and why.</param>
/// <param name="Follows">What else would follow.</param>
/// <param name="Notes">Late, or signed in another's stead.</param>
/// <param name="Missing">What stands against saving it now.</param>
public sealed record SignPreview(
    string Will,
    string Headline,
    IReadOnlyList<string> Because,
    IReadOnlyList<Effect> Rows,
    IReadOnlyList<string> NotCounted,
    IReadOnlyList<string> Follows,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Missing
);

/// <summary>The page on which one part is signed off.</summary>
public sealed record SignView(
    string Title,
    string? Coat,
    string Dog,
    string Done,
    string Left,
    IReadOnlyList<string> Notices,
    IReadOnlyList<(string Name, string Value)> Log,
    string LogHref,
    IReadOnlyList<string> Reported,
    IReadOnlyList<SignedView> Earlier,
    IReadOnlyList<Pick> Levels,
    IReadOnlyList<(string Word, string Note)> Criteria,
    IReadOnlyList<Pick> Marks,
    IReadOnlyList<Pick> Parts,
    IReadOnlyList<Pick> Phrases,
    IReadOnlyList<Pick> Watched,
    string Subject,
    bool Corrects,
    bool OpensPhrases,
    bool OpensParts,
    bool OpensIncident,
    SignPreview Preview
)
{
    public static SignView Of(
        PartToSign part,
        SignOffDraft draft,
        IncidentDraft? incident,
        Decision decision,
        IReadOnlyList<Foreseen> foreseen
    )
    {
        var groom = part.Groom;
        var names = part.Names;
        return new(
            $"{part.Subject.Name} with {part.Dog}",
            part.Kinds.Find(groom.Coat) is { } coat ? CoatSwatch.Of(coat) : null,
            $"{groom.Breed}, {Counts.And([.. groom.Coats.Select(names.Of)])}, {Say.Word(groom.Condition)}. {DoneBy(part)}",
            $"{names.Time.Day(groom.StartedAt)}, {names.Time.Clock(groom.StartedAt)} to {names.Time.Clock(groom.EndedAt)}",
            Say.Capital(names.Time.Left(part.OnTimeUntil)),
            [.. NoticesOf(part)],
            [.. LogOf(groom, names)],
            Paths.Groom(groom.Id.Value),
            [.. part.Story.Incidents.Select(one => ReportedOf(one.Incident, names))],
            [
                .. part
                    .Story.SignOffs.Where(one => one.Subject == part.Subject.Id)
                    .Reverse()
                    .Select(one => SignedView.Of(one, part.Story, names)),
            ],
            LevelPicks,
            CriteriaWords,
            MarkPicks,
            [.. PartPicks(part)],
            [.. QuickPhrases.SignOff.Select(phrase => new Pick(phrase.Code, phrase.Words))],
            [new Pick(bool.TrueString, groom.Watcher is null ? "I inspected the finished dog" : "I watched this groom")],
            part.Subject.Name,
            part.InForce is not null,
            OpensPhrases: !draft.Phrases.IsEmpty || draft.Criteria.HasNotYet || !draft.NotSuitable.IsEmpty,
            OpensParts: !draft.NotSuitable.IsEmpty,
            OpensIncident: incident is not null,
            PreviewOf(part, draft, incident, decision, foreseen)
        );
    }

    /// <summary>What was done, said on the page after.</summary>
    public static string Kept(PartToSign part) =>
        $"{part.Subject.Name} with {part.Dog} is signed off. {part.Subject.Name} sees it at once.";

    /// <summary>What somebody wrote in between.</summary>
    public static string MovedOn(PartToSign part) =>
        part.InForce is { } signed
            ? $"Meanwhile {part.Names.Of(signed.Senior)} signed this off, {part.Names.Time.Ago(signed.SignedAt)}: it stands below. What you chose is kept; to save it anyway, say why you correct it."
            : "Meanwhile something more was told of this groom: it stands below. What you chose is kept; look again, then save.";

    private static readonly IReadOnlyList<Pick> LevelPicks =
    [
        .. Enum.GetValues<SupportLevel>()
            .Select(level => new Pick(
                level.ToString(),
                Say.Word(level),
                Say.Note(level),
                Number: ((int)level).ToString(SalonTime.Culture)
            )),
    ];

    private static readonly IReadOnlyList<(string, string)> CriteriaWords =
    [
        .. Enum.GetValues<Criterion>().Select(one => (Say.Capital(Say.Word(one)), $"{Say.Capital(Say.Note(one))}.")),
    ];

    private static readonly IReadOnlyList<Pick> MarkPicks =
    [
        .. new[] { Mark.Met, Mark.NotYet, Mark.NotSeen }.Select(mark => new Pick(mark.ToString(), Say.Word(mark))),
    ];

    private static string DoneBy(PartToSign part)
    {
        var groom = part.Groom;
        var hers = groom.Parts.Where(one => one.Doer == part.Subject.Id).Select(one => part.Names.Of(one.Technique)).ToList();
        var others = groom.Parts.Where(one => one.Doer != part.Subject.Id).GroupBy(one => one.Doer);
        var shares = others.Select(doer =>
            $" {part.Names.Of(doer.Key)} did {Counts.And([.. doer.Select(one => part.Names.Of(one.Technique))])}."
        );
        return (hers.Count > 0 ? $"{Say.Capital(Counts.And(hers))}." : "") + string.Concat(shares);
    }

    private static IEnumerable<string> NoticesOf(PartToSign part)
    {
        if (part.Groom.Watcher is { } named && named != part.Signer.Person.Id)
            yield return $"{part.Names.Of(named)} was named as watching. If {part.Names.Of(named)} was away and you really watched, you sign, and the record says so.";
        if (part.Groom.Watcher is null)
            yield return $"{part.Subject.Name} did this one alone: you judge the finished dog.";
        if (part.Now > part.OnTimeUntil && part.InForce is not { IsLate: false })
            yield return "It is late now. You may still sign it, and it is shown as late; it does not count unless the owner says so.";
        if (part.Groom.EndedEarly)
            yield return "The groom was ended early: often the right thing.";
    }

    private static IEnumerable<(string, string)> LogOf(Groom groom, Names names)
    {
        if (!groom.Hazards.IsEmpty)
            yield return ("Hazards", Counts.And([.. groom.Hazards.Select(names.Of)]));
        if (!groom.Blades.IsEmpty)
            yield return ("Blades", Counts.And([.. groom.Blades]));
        if (!groom.Signs.IsEmpty)
            yield return ("Signs seen", Counts.And([.. groom.Signs.Select(Say.Word)]));
        if (!groom.Phrases.IsEmpty || !groom.Notes.IsEmpty)
            yield return (
                "Said",
                string.Join(
                    ". ",
                    groom.Phrases.Select(QuickPhrases.Of).Append(groom.Notes.Text).Where(text => !string.IsNullOrWhiteSpace(text))
                )
            );
    }

    private static string ReportedOf(Incident incident, Names names) =>
        $"{names.Of(incident.ReportedBy)} reported: {Say.Word(incident.Kind)}, {Say.Word(incident.Severity)}. {incident.WhatHappened.Text}";

    private static IEnumerable<Pick> PartPicks(PartToSign part) =>
        part
            .Groom.SkillsOf(part.Subject.Id)
            .Where(skill => !part.Kinds.IsCoat(skill))
            .Select(skill => new Pick(skill.Value, part.Names.Of(skill)));

    private static SignPreview PreviewOf(
        PartToSign part,
        SignOffDraft draft,
        IncidentDraft? incident,
        Decision decision,
        IReadOnlyList<Foreseen> foreseen
    )
    {
        var preview = SigningOff.Preview(draft, part.Groom, part.Signer, part.Kinds);
        var missing = decision is Refused refused ? refused.Reasons : [];
        var isOpen = missing.Any(reason => reason is LevelNotChosen or CriterionNotSet);
        var stops = incident is null ? [] : StopsOf(part, incident, foreseen);
        var isCritical = foreseen.Any(one => one.After.OpenReviews > one.Before.OpenReviews);
        var headline = isOpen ? "Not complete yet" : Say.Headline(isCritical ? Verdict.Critical : preview.Verdict);
        return new(
            WillOf(headline, preview, foreseen, part, isOpen),
            headline,
            isOpen ? [] : Say.Because(draft.Level!.Value, draft.Criteria),
            [.. foreseen.Where(one => IsShown(one, preview, isOpen)).Select(one => EffectOf(one, preview, part, isOpen))],
            Say.Reasons(preview.NotCounted, part.Names),
            [.. stops, .. isOpen ? [] : Say.Follows(foreseen.Where(one => incident is null || !one.WouldStop), part.Names)],
            [.. LateNote(part)],
            MissingOf(missing, part.Names)
        );
    }

    private static IReadOnlyList<string> MissingOf(IEnumerable<Reason> missing, Names names)
    {
        var unset = missing.OfType<CriterionNotSet>().ToList();
        return unset.Count < 2
            ? Say.Reasons(missing, names)
            : [.. Say.Reasons(missing.Where(reason => reason is not CriterionNotSet), names), Say.Unset(unset)];
    }

    // While it is not complete the rows are shown as they stand.
    private static bool IsShown(Foreseen one, SignOffPreview preview, bool isOpen) =>
        preview.Counted.Any(counted => counted.Skill == one.Of.Skill) || (!isOpen && one.Before.Row != one.After.Row);

    private static Effect EffectOf(Foreseen one, SignOffPreview preview, PartToSign part, bool isOpen)
    {
        var said = preview.Counted.FirstOrDefault(counted => counted.Skill == one.Of.Skill);
        return Effect.Made(
            isOpen ? one with { After = one.Before } : one,
            part.Names,
            said: isOpen || said is null ? "" : Say.Word(said.Verdict)
        );
    }

    private static string WillOf(
        string headline,
        SignOffPreview preview,
        IReadOnlyList<Foreseen> foreseen,
        PartToSign part,
        bool isOpen
    )
    {
        if (isOpen)
            return headline;
        var stopped = foreseen.Where(one => one.WouldStop).ToList();
        if (stopped.Count > 0)
            return Say.StopsAtOnce(stopped, part.Names);
        if (preview.Counted.IsEmpty)
            return $"{headline}: counts for nothing";
        var counted = foreseen.Where(one => preview.Counted.Any(of => of.Skill == one.Of.Skill)).ToList();
        var coats = counted.Where(one => part.Kinds.IsCoat(one.Of.Skill)).ToList();
        return coats.Count > 0
            ? $"{headline}: {string.Join(", ", coats.Select(coat => Say.MarksIn(coat, part.Names)))}"
            : $"{headline}: counts for {Counts.And([.. counted.Select(one => part.Names.Of(one.Of.Skill))])}";
    }

    private static IReadOnlyList<string> StopsOf(PartToSign part, IncidentDraft incident, IReadOnlyList<Foreseen> foreseen) =>
        Say.Stops(
            part.Book.House.IsCritical(incident.Kind, incident.Severity),
            incident.Severity,
            [.. foreseen.Where(one => one.After.OpenReviews > one.Before.OpenReviews)],
            part.Names
        );

    private static IEnumerable<string> LateNote(PartToSign part)
    {
        if (part.Now > part.OnTimeUntil && part.InForce is not { IsLate: false })
            yield return "Late: it does not count unless the owner says so.";
    }
}
