using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Dogs;

/// <summary>A dog comes for the first time.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class MeetModel(Who who, Ledger ledger, Ids ids) : AcademyPage, IDogPage
{
    [BindProperty]
    public DogForm Form { get; set; } = new();

    /// <summary>"log" where somebody is about to log this dog and comes back there.</summary>
    [BindProperty(SupportsGet = true)]
    public string? To { get; set; }

    public DogFormView View { get; private set; } = DogFormView.Nothing;

    public void OnGet()
    {
        Form = DogForm.Empty(ids.New(), operation: ids.New());
        Show();
    }

    /// <summary>What is usual for the breed is ticked; nothing is kept.</summary>
    public IActionResult OnPostSuggest()
    {
        Form.TakeSuggestion();
        ModelState.Clear();
        Show(wasAsked: true);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var dog = Form.Read(who.Book, isGone: false, ModelState);
        Show();
        if (!ModelState.IsValid)
            return Again();

        var decision = DogKeeping.Describe(dog, who.Today);
        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, Names.Of(who.Book, who.Hand.Now)));

        var kept = await ledger.KeepAsync(who.Salon, granted, who.Hand, new(Form.Operation), new(Form.Dog, Version: 0));
        return kept is Kept.RecordMovedOn
            ? MovedOn()
            : Done(To == "log" ? Paths.LogDog(Form.Dog) : Paths.Dog(Form.Dog), $"{dog.Name} is in the book.");
    }

    private void Show(bool wasAsked = false) => View = DogFormView.Of(Form, who.Book, wasAsked);
}
