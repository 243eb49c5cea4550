using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.People;

/// <summary>Who works here, who is yet to come, and who left.</summary>
public sealed record PeopleView(IReadOnlyList<PersonRow> Here, IReadOnlyList<PersonRow> Gone)
{
    public static PeopleView Of(SalonBook book, IReadOnlyDictionary<PersonId, SignInOf> signIns, SalonTime time)
    {
        var rows = book.People.ToLookup(person => IsGone(person, time.Today), person => Row(person));
        return new PeopleView([.. rows[false]], [.. rows[true]]);

        PersonRow Row(Person person) =>
            new(
                Paths.Person(person.Id.Value),
                person.Name,
                PersonWords.About(person, time),
                PersonWords.SignIn(signIns.GetValueOrDefault(person.Id, SignInOf.None), time)
            );
    }

    private static bool IsGone(Person person, DateOnly today) => person.LeftOn <= today || person.EndsOn < today;
}

/// <summary>One person of the list.</summary>
public sealed record PersonRow(string Path, string Name, string About, string SignIn);
