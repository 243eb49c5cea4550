using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage;

namespace Academy.Web.Tests.Hosting;

/// <summary>Work done in a test salon, as the rules grant it: the clock goes forward with it.</summary>
public static class Shift
{
    public static readonly string[] WoolBreeds = ["Poodle (Miniature)", "Bichon Frise", "Lagotto Romagnolo"];

    public static Task<Team> TeamAsync(this PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, Team>(records => records.TeamAsync(cast.Salon, portal.Now, default));

    public static async Task<Standing> StandingAsync(this PortalHost portal, Cast cast, Person person, string skill) =>
        (await portal.TeamAsync(cast))[person.Id, new SkillCode(skill)]!;

    public static Task<SalonBook> BookAsync(this PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, SalonBook>(records => records.SalonAsync(cast.Salon, default));

    /// <summary>The skills ask for no modules: what is left are grooms.</summary>
    public static async Task WithoutModulesAsync(this PortalHost portal, Cast cast, params IEnumerable<string> skills)
    {
        var book = await portal.BookAsync(cast);
        foreach (var skill in skills.Select(code => book.Find(new SkillCode(code))!))
            await portal.KeepAsync(cast.Salon, Keeping.DescribeSkill(skill with { Modules = [] }, skill, cast.Owner), cast.Owner);
    }

    /// <summary>A dog that wears this coat.</summary>
    public static async Task<Dog> MeetAsync(this PortalHost portal, Cast cast, string name, string breed, string coat)
    {
        var dog = new Dog(
            new DogId(portal.New()),
            name,
            breed,
            new SkillCode(coat),
            SecondCoat: null,
            [],
            portal.Today.AddYears(-3),
            AgeByLook.NotSaid,
            WeightKg: 9
        );
        await portal.KeepAsync(cast.Salon, DogKeeping.Describe(dog, portal.Today), cast.Owner);
        return dog;
    }

    /// <summary>A groom of an hour that ends now: the whole finish, by one person.</summary>
    public static async Task<Groom> LogAsync(this PortalHost portal, Cast cast, Person by, Person? watcher, Dog dog)
    {
        var groom = new Groom(
            new GroomId(portal.New()),
            dog.Id,
            by.Id,
            watcher?.Id,
            portal.Now.AddHours(-1),
            portal.Now,
            dog.Breed,
            dog.Coat!.Value,
            SecondCoat: null,
            CoatCondition.CombedThrough,
            WholeFinishBy: by.Id,
            [],
            [],
            [],
            [],
            [],
            [],
            Room: null,
            EndedEarly: false,
            [],
            Words.None
        );
        var logged = Logging.Log(groom, earlier: null, by, portal.Now, Cast.Zone);
        var then = await portal.DoAsync<RecordBook, Team>(book => book.TeamAsKnownAsync(cast.Salon, groom.StartedAt, default));
        var known = new KnownThen(dog, then, new HashSet<PersonId>(), new HouseRules(), Cast.Zone);
        await portal.KeepAsync(cast.Salon, logged.And(Flagging.Flag(groom, [], known)), by);
        return groom;
    }

    /// <summary>The senior's judgement of that groom, an hour later.</summary>
    public static async Task<SignOff> SignAsync(
        this PortalHost portal,
        Cast cast,
        Person senior,
        Groom groom,
        bool suits = true,
        string words = "Neat feet."
    )
    {
        portal.Clock.Advance(TimeSpan.FromHours(1));
        var id = new SignOffId(portal.New());
        var draft = new SignOffDraft(
            id,
            groom.By,
            HasWatched: true,
            suits ? SupportLevel.StoodBy : SupportLevel.HandsOn,
            Criteria.AllMet,
            [],
            [],
            new Words(words)
        );
        var signer = new Signer(
            senior,
            (await portal.TeamAsync(cast)).Of(senior.Id).ToDictionary(standing => standing.Skill, standing => standing.Kind),
            []
        );
        var story = await StoryAsync(portal, cast, groom);
        var kinds = new SkillKinds((await portal.BookAsync(cast)).Skills);
        await portal.KeepAsync(cast.Salon, SigningOff.Decide(draft, story, signer, kinds, portal.Now, Cast.Zone), senior);
        return (await StoryAsync(portal, cast, groom)).SignOffOf(groom.By)!;
    }

    /// <summary>Whoever was judged disputes that sign-off.</summary>
    public static async Task DisputeAsync(this PortalHost portal, Cast cast, Groom groom, SignOff signed, string words)
    {
        var by = cast.Everybody.Single(person => person.Id == signed.Subject);
        var story = await StoryAsync(portal, cast, groom);
        await portal.KeepAsync(cast.Salon, Disputing.Dispute(story, signed, isDisputed: false, by, new Words(words)), by);
    }

    /// <summary>A supervised groom with its sign-off; then the day goes on to the next.</summary>
    public static async Task<Groom> RatedAsync(
        this PortalHost portal,
        Cast cast,
        Person junior,
        Person senior,
        Dog dog,
        bool suits = true
    )
    {
        var groom = await portal.LogAsync(cast, junior, senior, dog);
        await portal.SignAsync(cast, senior, groom, suits);
        portal.Clock.Advance(TimeSpan.FromHours(23));
        return groom;
    }

    /// <summary>Both seniors are alone in wool, wool asks for no module, and this junior's row of it has this many marks.</summary>
    public static async Task<IReadOnlyList<Groom>> WoolAsync(this PortalHost portal, Cast cast, Person junior, int marks)
    {
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        await portal.DeclareAsync(cast, cast.SecondSenior, "wool");
        var dogs = new List<Dog>();
        foreach (var breed in WoolBreeds)
            dogs.Add(await portal.MeetAsync(cast, $"Dog {dogs.Count + 1}", breed, "wool"));
        var grooms = new List<Groom>();
        for (var at = 0; at < marks; at++)
            grooms.Add(
                await portal.RatedAsync(cast, junior, at % 2 == 0 ? cast.Senior : cast.SecondSenior, dogs[at % dogs.Count])
            );
        return grooms;
    }

    /// <summary>The owner clears a person for a skill.</summary>
    public static async Task ClearAsync(
        this PortalHost portal,
        Cast cast,
        Person person,
        string skill,
        Limits? limits = null,
        string? against = null
    )
    {
        // Two facts of one moment are ordered by their ids: a minute keeps them in the order of the story.
        portal.Clock.Advance(TimeSpan.FromMinutes(1));
        var standing = await portal.StandingAsync(cast, person, skill);
        var asked = new ClearanceAsked(new DecisionId(portal.New()), standing, limits ?? Limits.None);
        await portal.KeepAsync(
            cast.Salon,
            Clearing.Clear(
                new DecisionId(portal.New()),
                [asked],
                person,
                cast.Owner,
                against is not null,
                new Words(against ?? ""),
                portal.Now,
                Cast.Zone
            ),
            cast.Owner
        );
    }

    /// <summary>Skin opened through: critical by the list every salon starts with.</summary>
    public static async Task<IncidentId> CutAsync(this PortalHost portal, Cast cast, Groom groom, Person by)
    {
        portal.Clock.Advance(TimeSpan.FromMinutes(1));
        var draft = new IncidentDraft(
            new IncidentId(portal.New()),
            groom.By,
            portal.Now,
            IncidentKind.SkinOpened,
            Severity.Moderate,
            BodySite.Ear,
            [],
            VetContact.Phoned,
            new Words("A cut at the edge of the ear."),
            new Words("Pressed, and phoned the vet.")
        );
        await portal.KeepAsync(cast.Salon, Reporting.Report(draft, groom, by, new HouseRules(), portal.Now), by);
        return draft.Id;
    }

    private static async Task<GroomStory> StoryAsync(PortalHost portal, Cast cast, Groom groom) =>
        (await portal.DoAsync<RecordBook, Known<GroomRecord>?>(records => records.GroomAsync(cast.Salon, groom.Id, default)))!
            .Record
            .Story!;
}
