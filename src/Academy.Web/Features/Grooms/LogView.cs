using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>The page on which a groom is told.</summary>
/// <param name="Head">Which dog, since when.</param>
/// <param name="Who">Who watched, who did what.</param>
/// <param name="Coat">The coat on the table.</param>
/// <param name="Did">Techniques, blades, hazards, consents.</param>
/// <param name="Care">Welfare checks, signs, the room.</param>
/// <param name="Words">Quick phrases.</param>
/// <param name="Unusual">What an incident is described with.</param>
/// <param name="MoreThanAlone">What was missing for doing this alone; empty where nothing was, or somebody watched.</param>
/// <param name="Waiting">What a device says that keeps grooms for a while.</param>
/// <param name="Chosen">Every code that is chosen.</param>
public sealed record LogView(
    LogHead Head,
    WhoPart Who,
    CoatPart Coat,
    DidPart Did,
    CarePart Care,
    IReadOnlyList<Pick> Words,
    UnusualPart Unusual,
    IReadOnlyList<string> MoreThanAlone,
    WaitingLine Waiting,
    IReadOnlySet<string> Chosen
)
{
    /// <summary>How a part is drawn that is only asked when one of these values is chosen.</summary>
    public string Met(string when) => when.Split(' ').Any(Chosen.Contains) ? "met" : "unmet";

    public static LogView Of(Table table, LogForm form, IEnumerable<Reason>? moreThanAlone = null)
    {
        var names = Names.Of(table.Book, table.Now);
        var chosen = form.Chosen.ToHashSet(StringComparer.Ordinal);
        return new(
            LogHead.Of(table, names),
            WhoPart.Of(table, form),
            CoatPart.Of(table, form),
            DidPart.Of(table, form, chosen),
            CarePart.Of(table, form, names.Time),
            [.. QuickPhrases.Groom.Select(phrase => new Pick(phrase.Code, phrase.Words))],
            UnusualPart.Of(table, form),
            Say.Reasons(moreThanAlone ?? [], names),
            WaitingLine.Of(table.Me.Id.Value, table.Now),
            chosen
        );
    }
}

/// <summary>Which dog is on the table, since when, and what to mind with it today.</summary>
public sealed record LogHead(
    Guid Groom,
    string Href,
    string Name,
    string Line,
    string Since,
    bool IsToldAgain,
    bool IsStarted,
    IReadOnlyList<string> Cautions,
    string Zone
)
{
    public static LogHead Of(Table table, Names names)
    {
        var check = table.Ask(new DogAsked(table.Dog, []), table.Newest).Check;
        return new(
            table.Groom.Value,
            Paths.Log(table.Groom.Value, table.Dog.Id.Value),
            table.Dog.Name,
            DogWords.Line(table.Dog, names.Time),
            SinceOf(table, names.Time),
            IsToldAgain: table.Story is not null,
            IsStarted: table.Start is not null,
            Say.Reasons(check.Nobody.Concat(check.Cautions), names),
            table.Book.Zone.Id
        );
    }

    /// <summary>What the book says by now, where this groom was told or taken back on another device.</summary>
    public static string MovedOn(Table table, Names names) =>
        table.Story is { Groom: var told }
            ? $"This groom was told while you wrote: {names.Of(told.Coat)}, {names.Time.At(told.StartedAt)} to {names.Time.Clock(told.EndedAt)}. Save again to put yours in its place."
            : "This groom was started or taken back while you wrote. Save again to log it as you have it here.";

    private static string SinceOf(Table table, SalonTime time) =>
        (table.Story, table.Start) switch
        {
            ({ Groom: var told }, _) => $"Told before: {time.At(told.StartedAt)} to {time.Clock(told.EndedAt)}.",
            (_, { At: var began }) => $"Started {time.At(began)}.",
            _ => "",
        };
}

/// <summary>The salon's skills of a kind as choices: those in use, and retired ones only where they are chosen.</summary>
internal static class SkillPicks
{
    public static IReadOnlyList<Pick> Of(Table table, SkillKind kind, IEnumerable<string> chosen) =>
        [.. InUse(table, kind, chosen).Select(skill => new Pick(skill.Code.Value, skill.Name))];

    public static IEnumerable<Skill> InUse(Table table, SkillKind kind, IEnumerable<string> chosen) =>
        table.Book.Skills.Where(skill =>
            skill.Kind == kind && (!skill.IsRetired || chosen.Contains(skill.Code.Value, StringComparer.Ordinal))
        );
}
