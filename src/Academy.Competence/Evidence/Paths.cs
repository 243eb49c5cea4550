using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;

namespace Academy.Competence.Evidence;

/// <summary>What facts put on whose path in which skill.</summary>
public static class Paths
{
    /// <summary>Every step that one groom's story puts on anybody's path, as things stand.</summary>
    /// <remarks>
    /// One rated groom gives one step a skill. An unreviewed critical incident makes the groom critical and adds the stop at the
    /// moment it was reported; reviewed as not technique it replays as one unsuitable groom; laid on another it moves to her.
    /// </remarks>
    public static Listed<StepOf> Of(GroomStory story, TimeZoneInfo zone) =>
        story
            .Groom.Doers.Concat(story.Incidents.Select(one => one.Concerned).OfType<PersonId>())
            .Distinct()
            .SelectMany(person => Of(story, person, zone))
            .ToListed();

    /// <summary>The step that a decision puts on a path; none for facts that are not decisions about one skill.</summary>
    public static Listed<StepOf> Of(Fact fact, TimeZoneInfo zone) =>
        fact switch
        {
            ExperienceDeclared told =>
            [
                new(
                    told.Person,
                    told.Skill,
                    new Step(
                        Morning(told.On, zone),
                        told.Id.Value,
                        StepKind.Declared,
                        told.On,
                        ThresholdVersion: told.ThresholdVersion
                    )
                ),
            ],
            WorkElsewhere told => Enumerable
                .Range(0, told.Grooms)
                .Select(_ => Decided(told.Person, told.Skill, StepKind.Elsewhere, told.Id, Morning(told.On, zone), told.On))
                .ToListed(),
            ClearanceGiven given =>
            [
                new(
                    given.Person,
                    given.Skill,
                    new Step(given.At, given.Id.Value, StepKind.Cleared, SalonDay.Of(given.At, zone))
                    {
                        Limits = given.Limits,
                        IsException = given.IsException,
                        ThresholdVersion = given.ThresholdVersion,
                    }
                ),
            ],
            StoodDown stopped =>
            [
                Decided(stopped.Person, stopped.Skill, StepKind.StoodDown, stopped.Id, stopped.At, SalonDay.Of(stopped.At, zone)),
            ],
            StandDownLifted lifted =>
            [
                Decided(lifted.Person, lifted.Skill, StepKind.Lifted, lifted.Id, lifted.At, SalonDay.Of(lifted.At, zone)),
            ],
            _ => [],
        };

    /// <summary>
    /// The skills that an incident is about for the person it concerns: the dog's coats and hazards unless somebody else did the
    /// whole finish, and the techniques named or else all that she did.
    /// </summary>
    /// <remarks>Whoever did no part answers for it as the one in charge: for coats, hazards and the techniques named or else all.</remarks>
    public static Listed<SkillCode> SkillsOf(Incident incident, Groom groom, PersonId person)
    {
        var wasInCharge = !groom.Doers.Contains(person);
        var isHers = wasInCharge || groom.WholeFinishBy is null || groom.WholeFinishBy == person;
        var hers = groom.Parts.Where(part => wasInCharge || part.Doer == person).Select(part => part.Technique);
        return (isHers ? groom.Coats.Concat(groom.Hazards) : [])
            .Concat(incident.During.IsEmpty ? hers : incident.During)
            .Distinct()
            .ToListed();
    }

    private static StepOf Decided(
        PersonId person,
        SkillCode skill,
        StepKind kind,
        DecisionId id,
        DateTimeOffset at,
        DateOnly day
    ) => new(person, skill, new Step(at, id.Value, kind, day));

    // A declaration has a day, not a moment: it stands before that day's grooms, and holds as soon as it is recorded.
    private static DateTimeOffset Morning(DateOnly day, TimeZoneInfo zone) => SalonDay.End(day.AddDays(-1), zone);

    private static IEnumerable<StepOf> Of(GroomStory story, PersonId person, TimeZoneInfo zone)
    {
        var concerned = story.Incidents.Where(one => one.Incident.IsCritical && one.Concerned == person).ToListed();
        var skills = story
            .Groom.SkillsOf(person)
            .Concat(concerned.SelectMany(one => SkillsOf(one.Incident, story.Groom, person)))
            .Distinct();
        return skills
            .Select(skill => GroomStep(story, person, skill, concerned, zone))
            .OfType<StepOf>()
            .Concat(concerned.SelectMany(one => Stops(one, story.Groom, person, zone)));
    }

    private static StepOf? GroomStep(
        GroomStory story,
        PersonId person,
        SkillCode skill,
        Listed<IncidentStory> concerned,
        TimeZoneInfo zone
    )
    {
        var groom = story.Groom;
        var signed = story.SignOffOf(person);
        var counted =
            signed is not null && story.Counts(signed) ? signed.Counted.FirstOrDefault(one => one.Skill == skill) : null;
        var verdict = Worst(counted?.Verdict, concerned, groom, person, skill, story.Complaints);
        if (verdict is null && IsFoundUnsuitable(story, signed, skill))
            return null;

        var step = new Step(
            groom.EndedAt,
            groom.Id.Value,
            KindOf(groom, signed, person, verdict),
            SalonDay.Of(groom.EndedAt, zone),
            verdict,
            groom.Breed
        );
        return new StepOf(person, skill, step with { Senior = counted is null ? null : signed!.Senior });
    }

    // A late or uncounted judgement of "unsuitable" does not move the row, and such a groom does not feed recency either; one that
    // the owner took back was never said.
    private static bool IsFoundUnsuitable(GroomStory story, SignOff? signed, SkillCode skill) =>
        signed is not null
        && !story.Overturned.Contains(signed.Id)
        && SigningOff.VerdictOf(signed.Level, signed.Criteria, signed.NotSuitable, skill, story.Groom.Coats.Contains(skill))
            == Verdict.Unsuitable;

    private static StepKind KindOf(Groom groom, SignOff? signed, PersonId person, Verdict? verdict)
    {
        var wasAlone = groom.Watcher is null && signed is not { IsInspection: false } && groom.By == person;
        return (wasAlone, verdict) switch
        {
            (true, null) => StepKind.Alone,
            (true, _) => StepKind.Inspected,
            (false, null) => StepKind.Watched,
            (false, _) => StepKind.Rated,
        };
    }

    private static Verdict? Worst(
        Verdict? counted,
        Listed<IncidentStory> concerned,
        Groom groom,
        PersonId person,
        SkillCode skill,
        Listed<UpheldComplaint> complaints
    )
    {
        var verdicts = concerned
            .Where(one => SkillsOf(one.Incident, groom, person).Contains(skill))
            .Select(one => one.Review is { IsTechnique: false } ? Verdict.Unsuitable : Verdict.Critical)
            .Concat(complaints.Where(one => one.Person == person && one.Skills.Contains(skill)).Select(_ => Verdict.Unsuitable))
            .Concat(counted is { } said ? [said] : [])
            .ToList();
        return verdicts.Count == 0 ? null : verdicts.Max();
    }

    private static IEnumerable<StepOf> Stops(IncidentStory one, Groom groom, PersonId person, TimeZoneInfo zone) =>
        SkillsOf(one.Incident, groom, person)
            .Select(skill => new StepOf(
                person,
                skill,
                new Step(
                    one.Incident.ReportedAt,
                    one.Incident.Id.Value,
                    StepKind.StoodDown,
                    SalonDay.Of(one.Incident.ReportedAt, zone)
                )
                {
                    IsReviewOpen = one.Review is null,
                    IsTechnique = one.Review is { IsTechnique: true },
                }
            ));
}
