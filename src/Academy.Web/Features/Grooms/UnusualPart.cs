using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>What an incident or a near miss is described with.</summary>
/// <param name="Reported">Incidents reported already: what is filled in now is a further one.</param>
public sealed record UnusualPart(
    IReadOnlyList<Pick> Kinds,
    IReadOnlyList<Pick> Severities,
    IReadOnlyList<Pick> Sites,
    IReadOnlyList<Pick> Vets,
    IReadOnlyList<Pick> During,
    int Reported
)
{
    public static UnusualPart Of(Table table, LogForm form) =>
        new(
            Say.Picks<IncidentKind>(Say.Word),
            Say.Picks<Severity>(Say.Word, Say.Note),
            Say.Picks<BodySite>(Say.Word),
            Say.Picks<VetContact>(Say.Word),
            SkillPicks.Of(table, SkillKind.Technique, form.During),
            table.Story?.Incidents.Count ?? 0
        );
}
