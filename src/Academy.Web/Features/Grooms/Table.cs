using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Heat;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage;

namespace Academy.Web.Features.Grooms;

/// <summary>One dog on the table, and everything that is known while its groom is started or told.</summary>
/// <param name="Groom">The groom's id, made once.</param>
/// <param name="Known">What was told of it so far; null where nothing was.</param>
/// <param name="Dog">The dog.</param>
/// <param name="Last">Its last groom, for what is usual; null where this is its first.</param>
/// <param name="Team">Everybody's standings when it began.</param>
/// <param name="In">Who was ticked in on its day.</param>
/// <param name="Newest">The newest room reading.</param>
/// <param name="Book">The salon.</param>
/// <param name="Me">Who tells it.</param>
/// <param name="Now">Now.</param>
public sealed record Table(
    GroomId Groom,
    Known<GroomRecord>? Known,
    Dog Dog,
    Groom? Last,
    Team Team,
    IReadOnlySet<PersonId> In,
    RoomReading? Newest,
    SalonBook Book,
    Person Me,
    DateTimeOffset Now
)
{
    public StartedGroom? Start => Known?.Record.Start;

    public GroomStory? Story => Known?.Record.Story;

    public Listed<FlagStory> Flags => Known?.Record.Flags ?? [];

    public long Version => Known?.Version ?? 0;

    public DateOnly Today => SalonDay.Of(Now, Book.Zone);

    /// <summary>Seniors and the owner, who may watch: those who are in first.</summary>
    public IEnumerable<Person> Watchers => Others.Where(person => person.MayJudgeByRole);

    /// <summary>Everybody who may have done a part, the teller first.</summary>
    public IEnumerable<Person> Hands => Others.Prepend(Me);

    /// <summary>The reading that is offered for this groom: the newest, while it still says something.</summary>
    public RoomReading? Offered => Newest is not null && RoomHeat.IsNewEnough(Newest, Book.House, Now) ? Newest : null;

    /// <summary>The dog's hazards as of today, and the day's own where it is hot for this dog.</summary>
    public IEnumerable<SkillCode> HazardsNow
    {
        get
        {
            var hazards = Dog.HazardsOn(Today, Book.House);
            var heat = RoomHeat.StateOf(Newest, RoomHeat.IsAtRisk(hazards), Book.House, Now, Book.Zone);
            return heat is HeatState.Hot or HeatState.Stop ? hazards.With(SkillBook.HotDay) : hazards;
        }
    }

    /// <summary>What the dog check says of the teller and this dog, taken as in: whoever grooms is there.</summary>
    public (DogCheckAnswer Check, PersonAnswer? Mine) Ask(DogAsked asked, RoomReading? reading)
    {
        var check = DogCheck.Of(asked, Team, In.Append(Me.Id).ToHashSet(), reading, Book.House, Now, Book.Zone);
        return (check, check.People.FirstOrDefault(one => one.Person == Me.Id));
    }

    /// <summary>Why this groom, told as done alone, was more than its teller may do alone; nothing where she may.</summary>
    public Listed<Reason> MoreThanAlone(Groom told)
    {
        var (check, mine) = Ask(AskedOf(told), told.Room ?? Newest);
        return mine is { Place: Place.Alone }
            ? []
            : check
                .Nobody.Concat(check.TwoPeople)
                .Concat(check.Unknown)
                .Concat(mine?.Reasons ?? [])
                .Where(reason => reason is not NobodyToStandBeside)
                .Distinct()
                .ToListed();
    }

    // The dog as it was on the table: its coat and hazards as told, not as the book has them.
    private DogAsked AskedOf(Groom told) =>
        new(
            Dog with
            {
                Coat = told.Coat,
                SecondCoat = told.SecondCoat,
                Hazards = told.Hazards.Where(hazard => hazard != SkillBook.HotDay).ToListed(),
            },
            told.Parts.Select(part => part.Technique).Distinct().ToListed(),
            HasBreathingTrouble: told.Signs.Contains(Sign.LaboredBreathing)
        );

    private IEnumerable<Person> Others =>
        Team.People.Where(person => person.Id != Me.Id).OrderBy(person => In.Contains(person.Id) ? 0 : 1);
}
