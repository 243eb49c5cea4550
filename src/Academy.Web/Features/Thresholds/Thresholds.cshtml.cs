using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Thresholds;

/// <summary>Each skill's rules in words.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ThresholdsModel(Who who) : AcademyPage
{
    public ThresholdsView View { get; private set; } = null!;

    public void OnGet() => View = ThresholdsView.Of(who.Book, who.Today);
}
