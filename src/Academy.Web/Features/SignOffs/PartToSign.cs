using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.SignOffs;

/// <summary>One person's part in one groom, with everything that judging it asks for.</summary>
/// <param name="Known">The groom's story and disputes, as read.</param>
/// <param name="Dog">The dog's name.</param>
/// <param name="Subject">Whose part.</param>
/// <param name="Signer">Who is about to sign.</param>
/// <param name="Team">Everybody's standings now.</param>
public sealed record PartToSign(
    Known<GroomRecord> Known,
    string Dog,
    Person Subject,
    Signer Signer,
    Team Team,
    SalonBook Book,
    DateTimeOffset Now
)
{
    public GroomStory Story => Known.Record.Story!;

    public Groom Groom => Story.Groom;

    public SkillKinds Kinds { get; } = new(Book.Skills);

    public Names Names { get; } = Names.Of(Book, Now);

    /// <summary>The sign-off in force; null while there is none.</summary>
    public SignOff? InForce => Story.SignOffOf(Subject.Id);

    public DateTimeOffset OnTimeUntil => SigningOff.OnTimeUntil(Groom.EndedAt, Signer.DaysIn, Now, Book.Zone);

    /// <summary>The part; null where this salon has no such groom, or the person did nothing of it.</summary>
    public static async Task<PartToSign?> FindAsync(RecordBook records, Who who, Guid groom, Guid person, CancellationToken stop)
    {
        var known = await records.GroomAsync(who.Salon, new GroomId(groom), stop);
        if (known?.Record.Story is not { } story || !story.Groom.Doers.Contains(new PersonId(person)))
            return null;

        var now = who.Hand.Now;
        var dog = await records.DogAsync(who.Salon, story.Groom.Dog, stop);
        var team = await records.TeamAsync(who.Salon, now, stop);
        var groomed = SalonDay.Of(story.Groom.EndedAt, who.Zone);
        var daysIn = await records.DaysInAsync(who.Salon, who.Person.Id, groomed, stop);
        var standings = team.Of(who.Person.Id).ToDictionary(standing => standing.Skill, standing => standing.Kind);
        return new PartToSign(
            known,
            dog?.Record.Name ?? story.Groom.Breed,
            who.Book.Find(new PersonId(person))!,
            new Signer(who.Person, standings, daysIn),
            team,
            who.Book,
            now
        );
    }

    /// <summary>The sign-off, and the incident with it where one is reported: kept together or not at all.</summary>
    public Decision Decide(SignOffDraft draft, IncidentDraft? incident)
    {
        var signing = SigningOff.Decide(draft, Story, Signer, Kinds, Now, Book.Zone);
        return incident is null ? signing : signing.And(Reporting.Report(incident, Groom, Signer.Person, Book.House, Now));
    }

    /// <summary>The story as it would stand if this were kept now.</summary>
    public GroomStory Foresee(SignOffDraft draft, IncidentDraft? incident)
    {
        var signed = SigningOff.Foresee(draft, Story, Signer, Kinds, Now, Book.Zone);
        return incident is null ? signed : Reporting.Foresee(incident, signed, Signer.Person, Book.House, Now);
    }

    /// <summary>What each skill of this part would come to, and each that an incident would touch.</summary>
    public Task<IReadOnlyList<Foreseen>> ForeseeAsync(
        RecordBook records,
        SalonId salon,
        GroomStory after,
        CancellationToken stop
    ) =>
        records.ForeseeAsync(
            salon,
            Book,
            Story,
            after,
            Groom.SkillsOf(Subject.Id).Select(skill => new PathOf(Subject.Id, skill)),
            Now,
            stop
        );
}
