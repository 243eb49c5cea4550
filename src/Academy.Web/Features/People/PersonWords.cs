using Academy.Competence.People;
using Academy.Web.Wording;

namespace Academy.Web.Features.People;

/// <summary>How the pages about people speak of one of them.</summary>
internal static class PersonWords
{
    /// <summary>"senior since 3 March, deputy, until 30 June"</summary>
    public static string About(Person person, SalonTime time) => string.Join(", ", Parts(person, time));

    public static string SignIn(SignInOf signIn, SalonTime time) =>
        signIn switch
        {
            { LinkUntil: { } until } => $"has a link that opens until {time.At(until)}",
            { IsOpen: true } => "can sign in",
            _ => "cannot sign in yet",
        };

    private static IEnumerable<string> Parts(Person person, SalonTime time)
    {
        var begins = person.JoinedOn > time.Today ? "from" : "since";
        yield return $"{Say.Word(person.Role)} {begins} {time.Date(person.JoinedOn)}";
        if (person.IsDeputy)
            yield return "deputy";
        if (person is { Role: Role.Senior, MayWriteModules: true })
            yield return "writes modules";
        if (person.IsUnder18)
            yield return "under 18";
        if (person.LeftOn is { } left)
            yield return left <= time.Today ? $"left on {time.Date(left)}" : $"leaves on {time.Date(left)}";
        else if (person.EndsOn is { } last)
            yield return $"last day {time.Date(last)}";
    }
}
