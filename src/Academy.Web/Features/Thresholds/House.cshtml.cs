using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace Academy.Web.Features.Thresholds;

/// <summary>The salon, its vet, and its own numbers for heat, age, lifting and young workers.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class HouseModel(Who who, RecordBook records, Ledger ledger, Ids ids) : BookPage(who, records, ledger, ids)
{
    public static readonly IReadOnlyList<SelectListItem> Months = HouseForms.Months;
    public static readonly IReadOnlyList<Pick> Incidents = HouseForms.Incidents;

    public HouseForm House { get; set; } = new();

    protected override (string Name, BookForm Form) Shown => (nameof(House), House);

    public async Task OnGetAsync(CancellationToken stop) => House = await FreshAsync(HouseForms.Of(Who.Book), stop);

    public async Task<IActionResult> OnPostAsync([FromForm(Name = nameof(House))] HouseForm form, CancellationToken stop)
    {
        House = form;
        if (!ModelState.IsValid)
            return Again();

        var decision = Keeping
            .Describe(Typed(form.Name), Typed(form.VetName), Typed(form.VetPhone), Who.Person)
            .And(Keeping.SetHouseRules(form.Read(Who.Book.House), Who.Person));
        return await KeepAsync(decision, Paths.House, "The house rules are kept. They hold from now on.", stop);
    }

    private static Words Typed(string? text) => new(text?.Trim() ?? "");
}
