using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Decisions;

/// <summary>A page on which something is decided about one person who works here.</summary>
public abstract class PersonPage(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids) : KeepingPage(who, ledger)
{
    [FromRoute(Name = "person")]
    public Guid Id { get; set; }

    protected Person Person { get; private set; } = null!;

    protected Team Team { get; private set; } = null!;

    protected Names Names => Names.Of(Who.Book, Who.Hand.Now, titles.All);

    protected Guid New() => ids.New();

    /// <summary>A form about this person, as it is first shown.</summary>
    protected T Fresh<T>(long version)
        where T : PersonForm, new() => new() { Operation = ids.New(), Version = version };

    /// <summary>Reads the person, her standings, and the version that forms are shown at; null where nobody of that id works here.</summary>
    protected async Task<long?> ReadAsync(CancellationToken stop)
    {
        if (Who.Book.Find(new PersonId(Id)) is not { } person || !person.WorksOn(Who.Today))
            return null;

        Person = person;
        Team = await records.TeamAsync(Who.Salon, Who.Hand.Now, stop);
        return await records.VersionOfAsync(Who.Salon, Id, stop);
    }

    protected Standing? StandingIn(string skill) => Team[Person.Id, new SkillCode(skill)];

    protected Sent SentWith(PersonForm form) => new(form.Operation, Id, form.Version);

    /// <summary>The signature: whether the form can be read and the password is hers.</summary>
    protected async Task<bool> IsSignedAsync(SignedForm form, string name)
    {
        if (ModelState.IsValid && !await Who.ConfirmAsync(form.Password))
            ModelState.AddModelError($"{name}.{nameof(form.Password)}", Who.Unconfirmed!);
        return ModelState.IsValid;
    }

    /// <summary>Shows a form again at the version that is there now.</summary>
    protected void ShowAt(PersonForm form, string name, long version)
    {
        ModelState.Remove($"{name}.{nameof(form.Version)}");
        form.Version = version;
    }
}
