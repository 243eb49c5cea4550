using Academy.Competence.People;
using Academy.Storage.Accounts;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.People;

/// <summary>One person as the owner sees her.</summary>
public sealed record PersonView(
    string Name,
    string About,
    bool HasLeft,
    string SignIn,
    bool HasAccount,
    string? Failures,
    IReadOnlyList<SessionLine> Sessions,
    string? NewLink = null
)
{
    public static PersonView Of(
        Person person,
        Account? account,
        DateTimeOffset? linkUntil,
        int failures,
        IReadOnlyList<Session> sessions,
        SalonTime time
    )
    {
        var open = account is { PasswordHash: not null, LockedFrom: null };
        return new PersonView(
            person.Name,
            Say.Capital(PersonWords.About(person, time)),
            person.LeftOn <= time.Today,
            Say.Capital(PersonWords.SignIn(new SignInOf(open, linkUntil), time)),
            open,
            FailuresOf(failures),
            [.. sessions.Select(session => SessionLine.Of(session, own: null, time))]
        );
    }

    private static string? FailuresOf(int failures) =>
        failures == 0 ? null
        : failures >= Patience.StopsAt ? $"{failures} wrong passwords in a row: nothing more is tried until you say so."
        : failures >= Patience.Free ? $"{failures} wrong passwords in a row: each next try has to wait."
        : $"{Counts.Of(failures, "wrong password")} in a row.";
}
