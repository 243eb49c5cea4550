using Academy.Competence.Salons;
using Academy.Web.Wording;

namespace Academy.Web.Features.SignIn;

/// <summary>The cover as it is seen; the people only where the demo lets one step in.</summary>
public sealed record SignInView(string Salon, IReadOnlyList<StepIn> People)
{
    public static readonly SignInView Empty = new("", []);

    public static SignInView Of(SalonBook book, bool isDemo) =>
        new(
            book.Name,
            isDemo ? [.. book.People.Select(person => new StepIn(person.Id.Value, person.Name, Say.Word(person.Role)))] : []
        );
}

/// <summary>Somebody of the invented salon.</summary>
public sealed record StepIn(Guid Person, string Name, string Role);
