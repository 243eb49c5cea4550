using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.SetUp;

/// <summary>The first day: whoever has the key from the console opens the salon and is its owner. Afterwards there is no such page.</summary>
[AllowAnonymous]
public sealed class SetUpModel(FirstRun first, Ledger ledger, Accounts accounts, Ids ids, TimeProvider clock) : AcademyPage
{
    [BindProperty, Required(ErrorMessage = "Key: write the one that stands in the console of the portal")]
    public string? Key { get; set; }

    [
        BindProperty,
        Required(ErrorMessage = "Salon: write what it is called"),
        StringLength(80, ErrorMessage = "Salon: at most 80 letters")
    ]
    public string? Salon { get; set; }

    [BindProperty]
    public string? Zone { get; set; } = Zones.Likely;

    [
        BindProperty,
        Required(ErrorMessage = "Your name: write what people here call you"),
        StringLength(80, ErrorMessage = "Your name: at most 80 letters")
    ]
    public string? Person { get; set; }

    [BindProperty]
    public Credentials Own { get; set; } = new();

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) =>
        await first.SalonAsync(stop) is null ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        await first.Turn.WaitAsync(stop);
        try
        {
            return await first.SalonAsync(stop) is null ? await OpenAsync() : NotFound();
        }
        finally
        {
            first.Turn.Release();
        }
    }

    private async Task<IActionResult> OpenAsync()
    {
        var zone = Zones.Find(Zone);
        Check(zone);
        if (!ModelState.IsValid)
            return Again();

        var salon = new SalonId(ids.New());
        var owner = new Person(new PersonId(ids.New()), Person!.Trim(), Role.Owner, SalonDay.Of(clock.GetUtcNow(), zone!));
        var opened = (Granted)Keeping.Open(new Words(Salon!.Trim()), zone!, owner, owner.JoinedOn);

        await ledger.KeepAsync(salon, opened, HandOf(owner), new OperationId(ids.New()));
        var account = await accounts.OpenAsync(salon, owner.Id, Own.TidyName, Own.Password!);
        first.Opened(salon);

        await HttpContext.SignInAsync(account, Own.OwnDevice);
        return Done(Paths.Welcome, "The salon is open, and you are its owner.");
    }

    private Hand HandOf(Person owner) => new(owner.Id, DeviceWords.Of(Request.Headers.UserAgent), clock.GetUtcNow());

    private void Check(TimeZoneInfo? zone)
    {
        if (Key is not null && !first.Fits(Key))
            ModelState.AddModelError(
                nameof(Key),
                "Key: this is not the one in the console. Copy it whole; a restart makes a new one"
            );
        if (zone is null)
            ModelState.AddModelError(nameof(Zone), "Time zone: choose one of the list, such as Europe/Amsterdam");
        foreach (var wrong in Own.Against(Salon, Person))
            ModelState.AddModelError($"{nameof(Own)}.{nameof(Own.Password)}", wrong);
    }
}
