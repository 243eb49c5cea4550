using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Thresholds;

/// <summary>What the library suggests, by skill.</summary>
public sealed record SuggestedView(string Heading, string Lead, string Hint, IReadOnlyList<Pick> Modules)
{
    internal static SuggestedView Of(
        Listed<Suggestion> found,
        SalonBook book,
        IReadOnlyDictionary<ModuleName, string> titles,
        Names names
    )
    {
        var modules = found.Select(one => one.Module).Distinct().Count();
        return new(
            modules == 0 ? "Your skills ask for all that is suggested" : $"{Counts.Of(modules, "module")} could be asked for",
            "The author of a module says for which skills it was written. Asked for, it belongs to the rules: whoever has not passed it is not ready.",
            HintOf(book.House, names),
            [.. found.Select(one => new Pick(SuggestedForm.Key(one), titles[one.Module], Group: GroupOf(one, book, names)))]
        );
    }

    private static string HintOf(HouseRules house, Names names) =>
        house.ModulesDueInDays == 0
            ? "Whoever is alone in such a skill lapses today: the house rules give no days for what is new."
            : $"Whoever is alone in such a skill stays so until {names.Time.Date(names.Time.Today.AddDays(house.ModulesDueInDays))}, "
                + "and lapses then if it is not passed.";

    private static string GroupOf(Suggestion one, SalonBook book, Names names) =>
        book.Find(one.Skill)!.Modules is { IsEmpty: false } asked
            ? $"{Say.Capital(names.Of(one.Skill))}, asks for {Counts.And([.. asked.Select(names.Of)])}"
            : $"{Say.Capital(names.Of(one.Skill))}, asks for no module";
}
