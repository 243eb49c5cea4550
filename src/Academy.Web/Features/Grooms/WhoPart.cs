using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace Academy.Web.Features.Grooms;

/// <summary>Who did one technique, where the work was shared.</summary>
public sealed record DoerLine(string Code, string Field, string Technique, IReadOnlyList<SelectListItem> People);

/// <summary>Who watched, and who did which part.</summary>
public sealed record WhoPart(
    IReadOnlyList<Pick> Watchers,
    IReadOnlyList<Pick> Works,
    IReadOnlyList<DoerLine> Doers,
    IReadOnlyList<SelectListItem> Finishers,
    IReadOnlyList<SelectListItem> Concerned
)
{
    public static WhoPart Of(Table table, LogForm form) =>
        new(
            WatchersOf(table),
            [
                new(nameof(Work.Whole), "I did the whole groom"),
                new(nameof(Work.Parts), "I did parts of it"),
                new(nameof(Work.Shared), "we shared it"),
            ],
            [.. SkillPicks.InUse(table, SkillKind.Technique, form.Techniques).Select(technique => Doer(table, form, technique))],
            [new("nobody alone", ""), .. Hands(table, form.Finisher)],
            Hands(table, form.Concerned)
        );

    /// <summary>Those who may watch, whoever is in first, then nobody.</summary>
    public static IReadOnlyList<Pick> WatchersOf(Table table) =>
        [
            .. table.Watchers.Select(person => new Pick(
                person.Id.Value.ToString(),
                person.Name,
                table.In.Contains(person.Id) ? null : "not ticked in today"
            )),
            new Pick(LogForm.Nobody, "nobody"),
        ];

    private static DoerLine Doer(Table table, LogForm form, Skill technique) =>
        new(
            technique.Code.Value,
            $"Form.Doers[{technique.Code.Value}]",
            technique.Name,
            Hands(table, form.Doers.TryGetValue(technique.Code.Value, out var doer) ? doer : null)
        );

    private static IReadOnlyList<SelectListItem> Hands(Table table, string? chosen) =>
        [.. table.Hands.Select(person => Hand(person, table, chosen))];

    private static SelectListItem Hand(Person person, Table table, string? chosen) =>
        new(person.Id == table.Me.Id ? "me" : person.Name, person.Id.Value.ToString(), person.Id.Value.ToString() == chosen);
}
