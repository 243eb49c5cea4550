using Academy.Competence.Skills;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Welcome;

/// <summary>The list of first things, for the owner of a new salon.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class WelcomeModel(Who who, WelcomeQueries queries, Shelf shelf) : AcademyPage
{
    public WelcomeView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = WelcomeView.Of(
            who.Book,
            who.Person.Id.Value,
            await queries.DeclarationsAsync(who.Salon, stop),
            await queries.DogsAsync(who.Salon, stop),
            who.Book.Thresholds.Count(set => set.Version > 1),
            Suggesting.For(who.Book, shelf.Modules).Count
        );
}
