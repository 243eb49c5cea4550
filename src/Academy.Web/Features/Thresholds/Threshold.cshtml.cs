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

/// <summary>One skill's rules: looked at before they are saved, saved as a new version from a day on.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ThresholdModel(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids)
    : BookPage(who, records, ledger, ids)
{
    public static readonly IReadOnlyList<Pick> Rows = RowChoices.Picks;

    private const string Save = "save";

    private readonly RecordBook _records = records;

    [FromRoute(Name = "skill")]
    public string Code { get; set; } = "";

    public ThresholdForm Rules { get; set; } = new();

    public ThresholdView View { get; private set; } = null!;

    /// <summary>What the rules typed would let through; null until it was asked for.</summary>
    public ThresholdPreview? Preview { get; private set; }

    protected override (string Name, BookForm Form) Shown => (nameof(Rules), Rules);

    private Names Names => Names.Of(Who.Book, Who.Hand.Now, titles.All);

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (Find() is not { } skill)
            return NotFound();
        Rules = await FreshAsync(ThresholdForm.Of(Who.Book.ThresholdOn(skill.Code, Who.Today), Who.Today), stop);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(
        [FromForm(Name = nameof(Rules))] ThresholdForm rules,
        [FromForm(Name = "do")] string? asked,
        CancellationToken stop
    )
    {
        if (Find() is not { } skill)
            return NotFound();
        Rules = rules;
        if (!ModelState.IsValid)
            return Again();

        var threshold = rules.Read(skill.Code, Who.Book.NextVersionOf(skill.Code));
        if (asked == Save)
            return await KeepAsync(
                Keeping.SetThreshold(threshold, Who.Person, Who.Today),
                Paths.Threshold(Code),
                $"{Say.Capital(skill.Name)}: version {threshold.Version} holds from {Names.Time.Date(threshold.FromDay)}.",
                stop
            );

        var (now, then) = await _records.TeamUnderAsync(Who.Salon, threshold, Who.Hand.Now, stop);
        Preview = ThresholdPreview.Of(threshold, now, then, Names);
        return Page();
    }

    private Skill? Find()
    {
        var skill = Who.Book.Find(new SkillCode(Code));
        if (skill is not null)
            View = ThresholdView.Of(skill, Who.Book, Names);
        return skill;
    }
}
