using Academy.Competence.Grooms;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>The coat on the table.</summary>
public sealed record CoatPart(
    string Hint,
    IReadOnlyList<Pick> Coats,
    IReadOnlyList<Pick> SecondCoats,
    bool HasSecond,
    IReadOnlyList<Pick> Conditions
)
{
    public static CoatPart Of(Table table, LogForm form) =>
        new(
            table.Dog.Coat is { } usual
                ? $"Usual for {table.Dog.Name}: {table.Book.Find(usual)?.Name ?? usual.Value}. Change it if it is different today."
                : "Nobody has said yet which coat this dog wears. Choose the one in front of you.",
            CoatPicks.Of(table.Book, form.Coat),
            [new Pick("", "none"), .. CoatPicks.Of(table.Book, form.SecondCoat)],
            !string.IsNullOrEmpty(form.SecondCoat),
            Say.Picks<CoatCondition>(Say.Word)
        );
}
