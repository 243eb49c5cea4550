using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;

namespace Academy.Web.Demo;

/// <summary>What goes wrong in the last weeks: a correction, two disputes, an incident, a near miss.</summary>
internal sealed class DemoTrouble(DemoStory story)
{
    private static readonly Words s_tangle = new("The dog came with that tangle; it is in my log.");

    private int _corrected;
    private int _disputed;
    private bool _stopped;
    private bool _nearMiss;

    public void Befall(CastMember member, Groom groom, PersonId senior, DateOnly day, DateTimeOffset signedAt)
    {
        if (story.DaysAgo(day) <= 30 && _corrected++ == 0)
            story.Later(signedAt.AddDays(1), () => Correct(groom, senior, signedAt.AddDays(1)));
        if (
            member == DemoCast.Perpetua && story.DaysAgo(day) <= 16 && _disputed == 0
            || member == DemoCast.Robin && story.DaysAgo(day) <= 4 && _disputed == 1
        )
            Dispute(groom, signedAt.AddHours(2), isAnswered: _disputed++ == 0);
        if (
            member == DemoCast.Idris
            && story.DaysAgo(day) <= 24
            && !_stopped
            && groom.Watcher is null
            && groom.Coat != SkillBook.Smooth
        )
            Hurt(groom, signedAt.AddHours(1));
        if (member == DemoCast.Perpetua && story.DaysAgo(day) <= 9 && !_nearMiss)
            NearMiss(groom, groom.EndedAt.AddMinutes(10));
    }

    private void Correct(Groom groom, PersonId senior, DateTimeOffset at)
    {
        var first = story.Floor.Story(groom.Id).SignOffOf(groom.By)!;
        var draft = new SignOffDraft(
            new(story.NextId()),
            groom.By,
            HasWatched: true,
            SupportLevel.TalkedThrough,
            Criteria.AllMet with
            {
                Preparation = Mark.NotYet,
            },
            [],
            [],
            new("Brush out before the bath: two mats were left behind the ears."),
            first.Id,
            new("I had mixed up two dogs of that morning.")
        );
        story.Keep(draft, groom.Id, senior, at);
    }

    private void Dispute(Groom groom, DateTimeOffset at, bool isAnswered)
    {
        if (at.AddDays(isAnswered ? 2 : 0) > story.Now)
            return;
        story.Later(
            at,
            () =>
            {
                var judged = story.Floor.Story(groom.Id);
                var signed = judged.SignOffOf(groom.By)!;
                story.Tell(
                    Disputing.Dispute(judged, signed, isDisputed: false, story.Floor.Book.Find(groom.By)!, s_tangle),
                    groom.By,
                    at
                );
                if (isAnswered)
                    story.Later(at.AddDays(2), () => Answer(signed, at.AddDays(2)));
            }
        );
    }

    private void Answer(SignOff signed, DateTimeOffset at) =>
        story.Tell(
            Disputing.Answer(
                signed,
                new DisputeStory(signed.Id, signed.Subject, at.AddDays(-2), s_tangle, Answer: null),
                DemoStory.Owner,
                overturn: false,
                new("I looked at the dog with both of you: the judgement stands, and the tangle is noted.")
            ),
            DemoCast.Owner.Id,
            at
        );

    private void Hurt(Groom groom, DateTimeOffset at)
    {
        _stopped = true;
        var draft = new IncidentDraft(
            new(story.NextId()),
            groom.By,
            at,
            IncidentKind.SkinOpened,
            Severity.Moderate,
            BodySite.FlankOrArmpit,
            [],
            VetContact.Seen,
            new("A fold at the flank was caught; about a centimetre, through the skin."),
            new("Pressed with gauze, vet phoned and seen within the hour, owner told at once.")
        );
        story.Later(
            at,
            () =>
                story.Tell(
                    Reporting.Report(draft, groom, story.Floor.Book.Find(groom.By)!, story.Floor.Book.House, at),
                    groom.By,
                    at
                )
        );
        story.Later(at.AddDays(3), () => Review(groom, draft.Id, at.AddDays(3)));
    }

    private void Review(Groom groom, IncidentId incident, DateTimeOffset at)
    {
        var reported = story.Floor.Story(groom.Id).Incidents.First(one => one.Incident.Id == incident);
        story.Tell(
            Reporting.Review(
                reported,
                DemoStory.Owner,
                groom.By,
                isTechnique: true,
                new("Skin was not stretched before the pass. We practise it again together, from the start."),
                at
            ),
            DemoCast.Owner.Id,
            at
        );
    }

    private void NearMiss(Groom groom, DateTimeOffset at)
    {
        _nearMiss = true;
        var draft = new IncidentDraft(
            new(story.NextId()),
            groom.By,
            at,
            IncidentKind.FallOrHanging,
            Severity.NearMiss,
            BodySite.None,
            [],
            VetContact.NotNeeded,
            new("The dog stepped back to the table's edge; my hand was on it."),
            new("Moved the table to the wall.")
        );
        story.Tell(Reporting.Report(draft, groom, story.Floor.Book.Find(groom.By)!, story.Floor.Book.House, at), groom.By, at);
    }
}
