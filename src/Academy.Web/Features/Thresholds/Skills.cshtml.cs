using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Thresholds;

/// <summary>The salon's skills and the modules each asks for.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class SkillsModel(Who who, Titles titles) : AcademyPage
{
    public SkillsView View { get; private set; } = null!;

    public void OnGet() => View = SkillsView.Of(who.Book, Names.Of(who.Book, who.Hand.Now, titles.All));
}
