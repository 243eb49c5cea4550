using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Grooms;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>A dog that was chosen: what it asks for, what is missing for doing it alone, and who may watch.</summary>
public sealed record StartView(
    Guid Dog,
    string Name,
    string Line,
    string? Swatch,
    IReadOnlyList<string> Asks,
    IReadOnlyList<string> Cautions,
    string Answer,
    bool IsAlone,
    IReadOnlyList<string> Missing,
    IReadOnlyList<Pick> Watchers,
    string? Usual,
    string StraightHref
)
{
    public static StartView Of(Table table)
    {
        var names = Names.Of(table.Book, table.Now);
        var usual = (table.Last?.Parts ?? []).Select(part => part.Technique).Distinct().ToListed();
        var (check, mine) = table.Ask(new DogAsked(table.Dog, usual), table.Newest);
        // What is done is said when it is told; that nothing is agreed yet is no lack of this person.
        var unknown = check.Unknown.Where(reason => reason is not NoWorkAgreed);
        return new(
            table.Dog.Id.Value,
            table.Dog.Name,
            DogWords.Line(table.Dog, names.Time),
            CoatSwatch.Of(table.Dog.Coat?.Value),
            [.. check.Asked.Select(names.Of)],
            Say.Reasons(check.Nobody.Concat(check.TwoPeople).Concat(check.Cautions), names),
            AnswerOf(check, mine),
            IsAlone: mine?.Place == Place.Alone,
            Say.Reasons(unknown.Concat(mine?.Reasons ?? []), names),
            WhoPart.WatchersOf(table),
            Usual: table.Me.MayJudgeByRole ? LogForm.Nobody : null,
            Paths.Log(table.Groom.Value, table.Dog.Id.Value)
        );
    }

    private static string AnswerOf(DogCheckAnswer check, PersonAnswer? mine) =>
        (check, mine) switch
        {
            ({ Nobody.IsEmpty: false }, _) => "Not this dog, now",
            (_, { Place: Place.Alone }) => "You may, alone",
            (_, { Place: Place.Beside }) => "With somebody beside you",
            _ => "Only with a senior beside you",
        };
}
