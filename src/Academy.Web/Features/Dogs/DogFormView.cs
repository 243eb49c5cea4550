using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Table = Academy.Competence.Dogs.Breeds;

namespace Academy.Web.Features.Dogs;

/// <summary>The choices of the form in which a dog is described, as they stand for what is typed so far.</summary>
public sealed record DogFormView(
    IReadOnlyList<Pick> Coats,
    IReadOnlyList<Pick> SecondCoats,
    IReadOnlyList<Pick> Hazards,
    IReadOnlyList<Pick> Ages,
    IReadOnlyList<BreedOption> Breeds,
    IReadOnlyList<Pick> Meant,
    string? Suggested
)
{
    public static DogFormView Nothing { get; } = new([], [], [], [], [], [], null);

    private const int MatchesShown = 12;

    // They follow from birthday, weight and the day; asking for them as well would let two answers disagree.
    private static readonly SkillCode[] Follow = [SkillBook.Elderly, SkillBook.VeryYoung, SkillBook.FiftyKilos, SkillBook.HotDay];

    public static DogFormView Of(DogForm form, SalonBook book, bool wasAsked = false) =>
        new(
            CoatPicks.Of(book, form.Coat),
            [new Pick("", "none"), .. CoatPicks.Of(book, form.SecondCoat)],
            [.. HazardsOf(form, book)],
            Say.Picks<AgeByLook>(Say.Word),
            BreedOption.All,
            wasAsked ? MeantBy(form.Breed ?? "") : [],
            wasAsked ? Words(form, book) : null
        );

    private static IEnumerable<Pick> HazardsOf(DogForm form, SalonBook book) =>
        from skill in book.Skills
        where skill.Kind == SkillKind.Hazard
        let isTicked = form.Hazards.Contains(skill.Code.Value, StringComparer.Ordinal)
        where isTicked || (!skill.IsRetired && !Follow.Contains(skill.Code))
        select new Pick(skill.Code.Value, skill.Name);

    private static IReadOnlyList<Pick> MeantBy(string typed) =>
        Table.Named(typed) is not null
            ? []
            : [.. Table.Find(typed).Take(MatchesShown).Select(breed => new Pick(breed.Name, breed.Name, breed.Coat))];

    private static string Words(DogForm form, SalonBook book)
    {
        var suggested = BreedSuggestion.Of(form.Breed ?? "");
        var names = suggested.Hazards.Prepend(suggested.Coat ?? default).Select(code => book.Find(code)?.Name).OfType<string>();
        return names.ToList() is [_, ..] usual
            ? $"Usual for this breed: {Counts.And(usual)}. Look at the dog in front of you and change what differs."
            : "The list knows nothing usual for these words. Choose coat and hazards by the dog in front of you.";
    }
}

/// <summary>A breed in the list that opens under the box, with what a script ticks when it is taken.</summary>
public sealed record BreedOption(string Name, string Coat, string Hazards)
{
    public static IReadOnlyList<BreedOption> All { get; } =
    [
        .. Table.All.Select(breed => new BreedOption(
            breed.Name,
            breed.Coat,
            string.Join(' ', BreedSuggestion.Of(breed.Name).Hazards)
        )),
    ];
}
