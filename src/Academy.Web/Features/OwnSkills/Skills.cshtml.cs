using Academy.Competence;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.OwnSkills;

/// <summary>Somebody's skills: a junior sees her own, a senior those of juniors, the owner all.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class SkillsModel(Who who, RecordBook records, SkillsQueries queries, Titles titles, TimeProvider clock)
    : SkillsPage(who, records, queries, titles, clock)
{
    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop) =>
        Who.Book.Find(new PersonId(id)) is { } person && Who.Person.MaySee(person) ? await ShowAsync(person, stop) : NotFound();
}
