using Academy.Competence;
using Academy.Competence.Salons;

namespace Academy.Web.Wording;

/// <summary>How sentences call people, skills and modules in one salon, and the moment at which they are said.</summary>
/// <param name="Time">The moment and the salon's zone.</param>
public sealed record Names(
    IReadOnlyDictionary<PersonId, string> People,
    IReadOnlyDictionary<SkillCode, string> Skills,
    IReadOnlyDictionary<ModuleName, string> Titles,
    SalonTime Time
)
{
    private static readonly IReadOnlyDictionary<ModuleName, string> NoTitles = new Dictionary<ModuleName, string>();

    /// <param name="titles">Titles of modules; a module without one is called by its name.</param>
    public static Names Of(SalonBook book, DateTimeOffset now, IReadOnlyDictionary<ModuleName, string>? titles = null) =>
        new(
            book.People.ToDictionary(person => person.Id, person => person.Name),
            book.Skills.ToDictionary(skill => skill.Code, skill => skill.Name),
            titles ?? NoTitles,
            new SalonTime(book.Zone, now)
        );

    public string Of(PersonId person) => People.TryGetValue(person, out var name) ? name : "somebody no longer in the book";

    public string Of(SkillCode skill) => Skills.TryGetValue(skill, out var name) ? name : skill.Value;

    /// <summary>A module's title in quotation marks, as sentences carry it.</summary>
    public string Of(ModuleName module) => $"“{(Titles.TryGetValue(module, out var title) ? title : module.Value)}”";
}
