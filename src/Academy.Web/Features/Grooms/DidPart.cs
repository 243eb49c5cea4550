using Academy.Competence.Grooms;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Cut = Academy.Competence.Trade.Blades;

namespace Academy.Web.Features.Grooms;

/// <summary>What was done, with what, to which risks, and what the dog's owner agreed to.</summary>
public sealed record DidPart(
    IReadOnlyList<Pick> Techniques,
    string? Hint,
    IReadOnlyList<Pick> Blades,
    string BladesWhen,
    string BladeNumbers,
    string SkipToothWhen,
    string SurgicalWhen,
    IReadOnlyList<Pick> Hazards,
    string Known,
    IReadOnlyList<Pick> Consents,
    string ConsentsWhen
)
{
    public static DidPart Of(Table table, LogForm form, IReadOnlySet<string> chosen)
    {
        var hazards = SkillPicks.Of(table, SkillKind.Hazard, form.Hazards);
        var blades = Cut.Common.Union(form.Blades, StringComparer.Ordinal).ToList();
        return new(
            SkillPicks.Of(table, SkillKind.Technique, form.Techniques),
            table is { Last: not null, Story: null } ? "Ticked as last time. Change what was different." : null,
            [.. blades.Select(blade => new Pick(blade, blade == Cut.Comb ? "guard comb" : blade))],
            Joined(Cut.TakenFor),
            Joined(blades),
            Joined(blades.Where(Cut.IsSkipTooth)),
            Joined(blades.Where(Cut.IsSurgical)),
            hazards,
            Ticked(hazards, form),
            [.. ConsentAsked.All.Select(asked => Consent(asked, chosen))],
            Joined(ConsentAsked.All.Select(When))
        );
    }

    private static string Ticked(IReadOnlyList<Pick> hazards, LogForm form) =>
        hazards.Where(hazard => form.Hazards.Contains(hazard.Value)).Select(hazard => hazard.Words).ToList() is [_, ..] ticked
            ? string.Join(", ", ticked)
            : "none known";

    private static Pick Consent(ConsentAsked asked, IReadOnlySet<string> chosen) =>
        new(
            asked.Consent.ToString(),
            Say.Word(asked.Consent),
            Say.Note(asked.Consent),
            When: When(asked),
            IsMet: When(asked).Split(' ').Any(chosen.Contains)
        );

    private static string When(ConsentAsked asked) =>
        Joined(
            asked
                .Conditions.Select(condition => condition.ToString())
                .Concat(asked.Skills.Select(skill => skill.Value))
                .Concat(asked.Checks.Select(check => check.ToString()))
        );

    private static string Joined<T>(IEnumerable<T> values) => string.Join(' ', values);
}
