using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Disputes;

/// <summary>Disputes and late sign-offs that wait for the owner's word, oldest first.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class OpenModel(Who who, DisputeQueries disputes) : AcademyPage
{
    /// <summary>The last dispute of the page before.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? After { get; set; }

    /// <summary>The last late sign-off of the page before.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? Late { get; set; }

    public OpenView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = OpenView.Of(
            await disputes.OpenAsync(who.Salon, After, stop),
            await disputes.LateAsync(who.Salon, Late, stop),
            await disputes.AnsweredAsync(who.Salon, stop),
            who.Names
        );
}
