using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Salons;

/// <summary>The salon as last told: its name and vet, house rules, people, skills, thresholds in every version, editions of modules.</summary>
/// <remarks>Folded from facts in the order of the ledger; folded from those recorded up to a moment, it is the salon as known then.</remarks>
public sealed record SalonBook
{
    /// <summary>Its name.</summary>
    public string Name { get; init; } = "";

    /// <summary>Its time zone.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.Utc;

    /// <summary>Its vet's name.</summary>
    public string VetName { get; init; } = "";

    /// <summary>Its vet's telephone number.</summary>
    public string VetPhone { get; init; } = "";

    /// <summary>Its own numbers.</summary>
    public HouseRules House { get; init; } = new();

    /// <summary>Everybody who ever worked here, in the order of joining the book.</summary>
    public Listed<Person> People { get; init; }

    /// <summary>Its skills, retired ones included, in its order.</summary>
    public Listed<Skill> Skills { get; init; }

    /// <summary>Every version of every threshold, in the order set.</summary>
    public Listed<Threshold> Thresholds { get; init; }

    /// <summary>The newest edition seen of each module.</summary>
    public Listed<ModuleAsked> Library { get; init; }

    /// <summary>The modules of which the salon has an edition of its own, each with its newest.</summary>
    public Listed<OwnModule> OwnModules { get; init; }

    /// <summary>The notes of seniors to modules that stand, oldest first.</summary>
    public Listed<ModuleNoted> Notes { get; init; }

    /// <summary>For each edition and judge the newest judgement of its questions.</summary>
    public Listed<QuestionsJudged> Judgements { get; init; }

    /// <summary>Folds facts in the order of the ledger; those that are not about the book change nothing.</summary>
    public static SalonBook Of(IEnumerable<Recorded> facts) =>
        facts.Aggregate(new SalonBook(), (book, told) => book.After(told.Fact, told.RecordedAt));

    /// <summary>The book after one more fact, recorded at this moment.</summary>
    public SalonBook After(Fact fact, DateTimeOffset at) =>
        fact switch
        {
            SalonOpened told => this with { Name = told.Name.Text, Zone = TimeZoneInfo.FindSystemTimeZoneById(told.TimeZone) },
            SalonDescribed told => this with
            {
                Name = told.Name.Text,
                VetName = told.VetName.Text,
                VetPhone = told.VetPhone.Text,
            },
            HouseRulesSet told => this with { House = told.Rules },
            PersonDescribed told => this with { People = Put(People, Describe(told), person => person.Id == told.Person) },
            PersonLeft told => this with { People = Change(People, told.Person, person => person with { LeftOn = told.On }) },
            PersonCameBack told => this with
            {
                People = Change(People, told.Person, person => person with { LeftOn = null, EndsOn = null }),
            },
            SkillDescribed told => this with
            {
                Skills = Put(Skills, Describe(told, SalonDay.Of(at, Zone)), skill => skill.Code == told.Skill),
            },
            ThresholdSet told => this with { Thresholds = Thresholds.With(told.Threshold) },
            ModuleEditionSeen told => this with { Library = Put(Library, Seen(told), module => module.Module == told.Module) },
            ModuleNoted told => this with { Notes = Put(Notes, told, note => note.Note == told.Note) },
            ModuleNoteTakenBack told => this with { Notes = Notes.Where(note => note.Note != told.Note).ToListed() },
            QuestionsJudged told => this with
            {
                Judgements = Put(Judgements, told, one => one.ContentHash == told.ContentHash && one.By == told.By),
            },
            ModulePublished told => this with
            {
                OwnModules = Put(
                    OwnModules,
                    new(told.Module, told.Edition, told.ContentHash),
                    module => module.Module == told.Module
                ),
            },
            _ => this,
        };

    /// <summary>The person of this id; null if the salon has none.</summary>
    public Person? Find(PersonId id) => People.FirstOrDefault(person => person.Id == id);

    /// <summary>The skill of this code; null if the salon has none.</summary>
    public Skill? Find(SkillCode code) => Skills.FirstOrDefault(skill => skill.Code == code);

    /// <summary>The threshold of a skill in force on a day: the newest version whose day has come.</summary>
    /// <remarks>Where none has come yet the first one set holds: a day before the salon began is asked by its first rules.</remarks>
    public Threshold ThresholdOn(SkillCode skill, DateOnly day) =>
        Thresholds.Where(set => set.Skill == skill && set.FromDay <= day).MaxBy(set => (set.FromDay, set.Version))
        ?? Thresholds.FirstOrDefault(set => set.Skill == skill)
        ?? DefaultThresholds.For(skill, DateOnly.MinValue);

    /// <summary>The number of the next version of a skill's threshold.</summary>
    public int NextVersionOf(SkillCode skill) =>
        Thresholds.Where(set => set.Skill == skill).Select(set => set.Version).DefaultIfEmpty().Max() + 1;

    /// <summary>Owners who work here on a day.</summary>
    public int OwnersOn(DateOnly day) => People.Count(person => person.Role == Role.Owner && person.WorksOn(day));

    private ModuleAsked Seen(ModuleEditionSeen told)
    {
        var seen = new ModuleAsked(
            told.Module,
            told.Edition,
            told.SafetyCriticalSince,
            told.RefresherDays,
            told.RenewedEachSpring
        );
        return Library.FirstOrDefault(module => module.Module == told.Module)?.Then(seen, told.CatchUpBy) ?? seen;
    }

    private Skill Describe(SkillDescribed told, DateOnly day)
    {
        var skill = new Skill(told.Skill, told.Kind, told.Name, told.Modules, told.IsRetired);
        return Find(told.Skill)?.Anew(skill, day) ?? skill;
    }

    private Person Describe(PersonDescribed told) =>
        new(
            told.Person,
            told.Name.Text,
            told.Role,
            told.JoinedOn,
            told.EndsOn,
            Find(told.Person)?.LeftOn,
            told.IsUnder18,
            told.IsDeputy,
            told.WritesModules == true
        );

    private static Listed<Person> Change(Listed<Person> people, PersonId id, Func<Person, Person> change) =>
        people.Select(person => person.Id == id ? change(person) : person).ToListed();

    private static Listed<T> Put<T>(Listed<T> all, T one, Func<T, bool> isSame) =>
        all.Any(isSame) ? all.Select(old => isSame(old) ? one : old).ToListed() : all.With(one);
}

/// <summary>A module of which a salon has an edition of its own.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">The number of the newest.</param>
/// <param name="ContentHash">Its fingerprint.</param>
public sealed record OwnModule(ModuleName Module, int Edition, string ContentHash);
