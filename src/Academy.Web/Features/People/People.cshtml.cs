using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.People;

/// <summary>Everybody of the salon.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class PeopleModel(Who who, PeopleQueries queries) : AcademyPage
{
    public PeopleView View { get; private set; } = new([], []);

    public async Task OnGetAsync(CancellationToken stop) =>
        View = PeopleView.Of(who.Book, await queries.SignInsAsync(who.Salon, stop), who.Time);
}
