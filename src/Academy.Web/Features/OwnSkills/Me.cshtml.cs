using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.OwnSkills;

/// <summary>One's own skills: what is left for each, in plain words.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class MeModel(Who who, RecordBook records, SkillsQueries queries, Titles titles, TimeProvider clock)
    : SkillsPage(who, records, queries, titles, clock)
{
    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await ShowAsync(Who.Person, stop);
}
