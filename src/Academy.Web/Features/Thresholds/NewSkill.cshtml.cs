using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Thresholds;

/// <summary>A skill of the salon's own: it begins with the standard row, from today.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class NewSkillModel(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids)
    : BookPage(who, records, ledger, ids)
{
    public SkillForm Skill { get; set; } = new();

    public SkillView View { get; } = SkillView.Of(skill: null, who.Book.House, titles.All);

    protected override (string Name, BookForm Form) Shown => (nameof(Skill), Skill);

    public async Task OnGetAsync(CancellationToken stop) => Skill = await FreshAsync(new SkillForm(), stop);

    public async Task<IActionResult> OnPostAsync([FromForm(Name = nameof(Skill))] SkillForm form, CancellationToken stop)
    {
        Skill = form;
        if (Typed.Choice<SkillKind>(form.Kind) is not { } kind)
            ModelState.AddModelError($"{nameof(Skill)}.{nameof(form.Kind)}", "Kind: choose one");
        else if (ModelState.IsValid)
            return await AddAsync(form, kind, stop);
        return Again();
    }

    private Task<IActionResult> AddAsync(SkillForm form, SkillKind kind, CancellationToken stop)
    {
        var skill = form.Read(SkillCodes.For(form.Name ?? "", Who.Book), kind);
        var decision = Keeping
            .DescribeSkill(skill, before: null, Who.Person)
            .And(Keeping.SetThreshold(DefaultThresholds.For(skill.Code, Who.Today), Who.Person, Who.Today));
        return KeepAsync(decision, Paths.Skills, $"{Say.Capital(skill.Name)} is added, with the standard row.", stop);
    }
}
