using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Thresholds;

/// <summary>Renaming a skill, retiring it, and choosing the modules it asks for.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class SkillModel(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids)
    : BookPage(who, records, ledger, ids)
{
    [FromRoute(Name = "skill")]
    public string Code { get; set; } = "";

    public SkillForm Skill { get; set; } = new();

    public SkillView View { get; private set; } = null!;

    protected override (string Name, BookForm Form) Shown => (nameof(Skill), Skill);

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (Find() is not { } skill)
            return NotFound();
        Skill = await FreshAsync(SkillForm.Of(skill), stop);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync([FromForm(Name = nameof(Skill))] SkillForm form, CancellationToken stop)
    {
        if (Find() is not { } before)
            return NotFound();
        Skill = form;
        if (!ModelState.IsValid)
            return Again();

        var skill = form.Read(before.Code, before.Kind);
        var decision = Keeping.DescribeSkill(skill, before, Who.Person);
        return await KeepAsync(decision, Paths.Skills, $"{Say.Capital(skill.Name)} is kept.", stop);
    }

    private Skill? Find()
    {
        var skill = Who.Book.Find(new SkillCode(Code));
        if (skill is not null)
            View = SkillView.Of(skill, Who.Book.House, titles.All);
        return skill;
    }
}
