using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Competence.Incidents;

/// <summary>What somebody reports; the owner's list says whether it is critical.</summary>
/// <param name="Id">Made once.</param>
/// <param name="Person">Who was grooming.</param>
/// <param name="NoticedAt">When it was noticed.</param>
/// <param name="Kind">What.</param>
/// <param name="Severity">How bad.</param>
/// <param name="Site">Where.</param>
/// <param name="During">Techniques it happened during.</param>
/// <param name="Vet">Whether a vet came into it.</param>
/// <param name="WhatHappened">Words.</param>
/// <param name="WhatWasDone">Words.</param>
public sealed record IncidentDraft(
    IncidentId Id,
    PersonId Person,
    DateTimeOffset NoticedAt,
    IncidentKind Kind,
    Severity Severity,
    BodySite Site,
    Listed<SkillCode> During,
    VetContact Vet,
    Words WhatHappened,
    Words WhatWasDone
);

/// <summary>Reporting an incident and reviewing it.</summary>
public static class Reporting
{
    /// <summary>Anyone may report on any groom, also days later: clipper irritation often shows only a day or two on, at home.</summary>
    public static Decision Report(IncidentDraft draft, Groom groom, Person by, HouseRules house, DateTimeOffset now)
    {
        return Decision.Of(Against(), () => [new IncidentReported(Write(draft, groom, by, house, now))]);

        IEnumerable<Reason> Against()
        {
            if (!groom.Doers.Contains(draft.Person))
                yield return new DidNoPart(draft.Person);
            if (draft.NoticedAt > now + Logging.Grace)
                yield return new InTheFuture(draft.NoticedAt);
            if (draft.WhatHappened.IsEmpty)
                yield return new WordsNeeded(WordsFor.Incident);
        }
    }

    /// <summary>The story as it would stand if this were reported now, whatever is against it: for showing what it would stop.</summary>
    public static GroomStory Foresee(IncidentDraft draft, GroomStory story, Person by, HouseRules house, DateTimeOffset now) =>
        story with
        {
            Incidents = story.Incidents.With(new(Write(draft, story.Groom, by, house, now), Review: null)),
        };

    /// <summary>The story as it would stand after this review, whatever is against it: for showing what follows from it.</summary>
    public static GroomStory Foresee(
        IncidentId incident,
        GroomStory story,
        Person owner,
        PersonId? responsible,
        bool isTechnique,
        DateTimeOffset now
    )
    {
        var review = new IncidentReview(incident, owner.Id, now, responsible, isTechnique, Words.None);
        return story with
        {
            Incidents = story
                .Incidents.Select(one => one.Incident.Id == incident ? one with { Review = review } : one)
                .ToListed(),
        };
    }

    /// <summary>The owner's review: who was responsible, and whether technique contributed.</summary>
    public static Decision Review(
        IncidentStory story,
        Person owner,
        PersonId? responsible,
        bool isTechnique,
        Words found,
        DateTimeOffset now
    )
    {
        return Decision.Of(
            Against(),
            new IncidentReviewed(
                story.Incident.Groom,
                new IncidentReview(story.Incident.Id, owner.Id, now, responsible, isTechnique, found)
            )
        );

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (story.Review is not null)
                yield return new ReviewedAlready();
            if (found.IsEmpty)
                yield return new WordsNeeded(WordsFor.Review);
        }
    }

    /// <summary>
    /// The owner upholds a complaint or a redo: one unsuitable groom for the person, in her coats and the techniques named, or in all
    /// that she did where neither is left.
    /// </summary>
    public static Decision UpholdComplaint(Groom groom, PersonId person, Listed<SkillCode> techniques, Person owner, Words says)
    {
        return Decision.Of(
            Against(),
            () => [new ComplaintUpheld(groom.Id, person, SkillsComplainedOf(groom, person, techniques), says)]
        );

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (!groom.Doers.Contains(person))
                yield return new DidNoPart(person);
            if (says.IsEmpty)
                yield return new WordsNeeded(WordsFor.Incident);
        }
    }

    /// <summary>The story as it would stand if this complaint were upheld now: for showing what it would do.</summary>
    public static GroomStory ForeseeUpheld(GroomStory story, PersonId person, Listed<SkillCode> techniques, DateTimeOffset now) =>
        story with
        {
            Complaints = story.Complaints.With(new(person, now, SkillsComplainedOf(story.Groom, person, techniques))),
        };

    private static Listed<SkillCode> SkillsComplainedOf(Groom groom, PersonId person, Listed<SkillCode> techniques)
    {
        var hers = groom.SkillsOf(person).ToListed();
        var named = hers.Where(skill => groom.Coats.Contains(skill) || techniques.Contains(skill)).ToListed();
        return named.IsEmpty ? hers : named;
    }

    private static Incident Write(IncidentDraft draft, Groom groom, Person by, HouseRules house, DateTimeOffset now) =>
        new(
            draft.Id,
            groom.Id,
            draft.Person,
            by.Id,
            now,
            draft.NoticedAt,
            draft.Kind,
            draft.Severity,
            draft.Site,
            draft.During,
            draft.Vet,
            house.IsCritical(draft.Kind, draft.Severity),
            draft.WhatHappened,
            draft.WhatWasDone
        );
}
