using Academy.Competence.People;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.People;

/// <summary>The choices on the pages about people.</summary>
public static class PersonPicks
{
    public static IReadOnlyList<Pick> Roles { get; } = Say.Picks<Role>(role => Say.Capital(Say.Word(role)), Note);

    private static string Note(Role role) =>
        role switch
        {
            Role.Junior => "learns, grooms with a senior, and alone where cleared",
            Role.Senior => "judges the grooms of others where she is alone herself",
            _ => "decides, sets thresholds, looks after people; may also judge",
        };
}
