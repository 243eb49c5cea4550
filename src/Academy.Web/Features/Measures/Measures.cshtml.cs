using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Measures;

/// <summary>The quizzes of the salon, each with how its first tries went.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class MeasuresModel(Who who, QuizBook quizzes, Shelf library) : AcademyPage
{
    public MeasuresView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = MeasuresView.Of(library, who.Book, await quizzes.FirstTriesAsync(who.Salon, stop));
}
