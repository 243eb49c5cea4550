using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Judgements;

/// <summary>The modules whose questions seniors judge, each with how far one has come.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class JudgeModel(Who who, JudgingBook judgings, Shelf library) : AcademyPage
{
    public JudgeView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = JudgeView.Of(library, who.Book, who.Person, await judgings.AllAsync(who.Salon, who.Person.Id, stop));
}
