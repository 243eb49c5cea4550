using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.DogChecks;

/// <summary>One person in the answer.</summary>
public sealed record PersonLine(string Name, string? With, IReadOnlyList<string> Reasons, string Mark, string Href);

/// <summary>A group of people: may alone, may with somebody, not this dog.</summary>
public sealed record AnswerGroup(string Id, string Title, string Shape, bool IsAlone, IReadOnlyList<PersonLine> People);

/// <summary>The answer in words.</summary>
public sealed record AnswerView(
    string Headline,
    string Lead,
    IReadOnlyList<string> Nobody,
    IReadOnlyList<string> TwoPeople,
    IReadOnlyList<string> Unknown,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Asks,
    IReadOnlyList<AnswerGroup> Groups
);

/// <summary>The dog asked about, in one line, with its swatch.</summary>
public sealed record DogView(string Name, string Line, string? Coat, string? Href);

/// <summary>The dog check: choosing a dog, saying the work, reading the answer.</summary>
public sealed record DogCheckView(
    string Title,
    string Moment,
    bool IsPast,
    DogView? Dog,
    AnswerView? Answer,
    IReadOnlyList<Pick> Choices,
    bool IsSearch,
    IReadOnlyList<Pick> Techniques,
    IReadOnlyList<Pick> Hazards,
    IReadOnlyList<Pick> Coats,
    IReadOnlyList<Pick> Ages
)
{
    public static DogCheckView ToChoose(SalonBook book, IReadOnlyList<DogChoice> found, string? words, DateTimeOffset now) =>
        Empty(book, now, isPast: false) with
        {
            Choices = [.. found.Select(dog => new Pick(dog.Id.ToString(), dog.Name, dog.Breed, dog.Coat))],
            IsSearch = !string.IsNullOrWhiteSpace(words),
        };

    public static DogCheckView Of(
        SalonBook book,
        DogAsked asked,
        DogCheckAnswer? answer,
        DogCheckForm form,
        DateTimeOffset at,
        bool isPast
    )
    {
        var names = Names.Of(book, at);
        var view = Empty(book, at, isPast);
        return view with
        {
            Title = answer is null ? $"{asked.Dog.Name}: what is to be done?" : Say.Headline(answer, asked.Dog.Name, names),
            Dog = DogOf(asked.Dog, book, form, names),
            Answer = answer is null ? null : AnswerOf(answer, asked.Dog.Name, names),
        };
    }

    private static DogCheckView Empty(SalonBook book, DateTimeOffset at, bool isPast)
    {
        var time = new SalonTime(book.Zone, at);
        return new(
            "Which dog?",
            $"{time.Day(at)}, {time.Clock(at)}",
            isPast,
            Dog: null,
            Answer: null,
            Choices: [],
            IsSearch: false,
            Picks(book, SkillKind.Technique),
            [.. Picks(book, SkillKind.Hazard).Where(pick => pick.Value != SkillBook.HotDay.Value)],
            [.. Picks(book, SkillKind.Coat).Select(pick => pick with { Coat = pick.Value })],
            Say.Picks<AgeByLook>(Say.Word)
        );
    }

    private static IReadOnlyList<Pick> Picks(SalonBook book, SkillKind kind) =>
        [
            .. book
                .Skills.Where(skill => skill.Kind == kind && !skill.IsRetired)
                .Select(skill => new Pick(skill.Code.Value, skill.Name)),
        ];

    private static DogView DogOf(Dog dog, SalonBook book, DogCheckForm form, Names names) =>
        new(dog.Name, DogWords.Asked(dog, book.House, names), dog.Coat?.Value, form.Dog is { } id ? Paths.Dog(id) : null);

    private static AnswerView AnswerOf(DogCheckAnswer answer, string dog, Names names)
    {
        var groups = new[]
        {
            Group("may-alone", "May, alone", "a-alone", Place.Alone, answer, names),
            Group("with-somebody", "With somebody beside", "", Place.Beside, answer, names),
            Group("not-this-dog", "Not this dog", "a-not", Place.Not, answer, names),
        };
        return new(
            Say.Headline(answer, dog, names),
            LeadOf(answer),
            Say.Reasons(answer.Nobody, names),
            Say.Reasons(answer.TwoPeople, names),
            Say.Reasons(answer.Unknown, names),
            Say.Reasons(answer.Cautions, names),
            [.. answer.Asked.Select(names.Of)],
            [.. groups.Where(group => group.People.Count > 0)]
        );
    }

    private static string LeadOf(DogCheckAnswer answer) =>
        answer switch
        {
            { Nobody.IsEmpty: false } => "No clearance covers this. What stands below comes before anybody's standing.",
            { Unknown.IsEmpty: false } => "What is not known counts as no.",
            { TwoPeople.IsEmpty: false } => "Below: who with whom, and who not.",
            _ when answer.People.Any(one => one.Place == Place.Beside) =>
                "Everybody else: with somebody beside, or not this dog.",
            _ => "Everybody else: not this dog.",
        };

    private static AnswerGroup Group(string id, string title, string shape, Place place, DogCheckAnswer answer, Names names) =>
        new(
            id,
            title,
            shape,
            place == Place.Alone,
            [.. answer.People.Where(one => one.Place == place).Select(one => Line(one, answer.Asked, names))]
        );

    private static PersonLine Line(PersonAnswer one, Listed<SkillCode> asked, Names names) =>
        new(
            names.Of(one.Person),
            one.Place == Place.Beside ? Say.Capital(Say.Beside(one, names)) + "." : null,
            (one.Reasons.IsEmpty, one.Place) switch
            {
                (true, Place.Alone) => [$"Alone in all {Counts.Of(asked.Count, "skill")} that the dog asks for."],
                (true, Place.Not) => ["Nothing is missing here: what stands above comes first."],
                _ => Say.Reasons(one.Reasons, names),
            },
            one.Place switch
            {
                Place.Alone => "holds",
                Place.Beside => "not-yet",
                Place.Not when one.Reasons.IsEmpty => "not-yet",
                _ => "fails",
            },
            $"/people/{one.Person.Value}/skills"
        );
}
