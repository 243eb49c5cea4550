using Academy.Competence;
using Academy.Competence.Forecasts;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Forecasts;

/// <summary>One skill that somebody learns, and what is foreseen for it; null where too little is known or the row is full.</summary>
public sealed record AheadFound(Standing Standing, Skill Skill, int Need, Outlook? Outlook);

/// <summary>When somebody's rows may be full.</summary>
public sealed record AheadView(
    string Heading,
    string Lead,
    string Skills,
    string Back,
    string Empty,
    IReadOnlyList<AheadRow> Rows
)
{
    public static AheadView Of(Person person, bool isOwn, IReadOnlyList<AheadFound> found, Names names) =>
        new(
            isOwn ? "What lies ahead for you" : $"What lies ahead for {person.Name}",
            isOwn
                ? "When each row you have begun may be full, as well as your own grooms can tell."
                : "When each row that was begun may be full, as well as the grooms so far can tell.",
            isOwn ? Paths.MySkills : Paths.SkillsOf(person.Id.Value),
            isOwn ? "My skills" : $"Skills of {person.Name}",
            isOwn
                ? "No row of yours is begun, or you are alone in all that you began."
                : "No row is begun, or none is left to fill.",
            [.. found.Select(one => AheadRow.Of(one, names))]
        );
}

/// <summary>What is foreseen for one skill.</summary>
public sealed record AheadRow(
    string Id,
    string Name,
    string? Coat,
    int Have,
    int Need,
    string Says,
    IReadOnlyList<AheadDays> Days,
    IReadOnlyList<string> Helps
)
{
    internal static AheadRow Of(AheadFound found, Names names) =>
        new(
            $"ahead-{found.Skill.Code.Value}",
            Say.Capital(found.Skill.Name),
            CoatSwatch.Of(found.Skill),
            Math.Min(found.Standing.Tally.Row, found.Need),
            found.Need,
            ForecastWords.Of(found),
            found.Outlook is { IsOffCourse: false } outlook
                ?
                [
                    AheadDays.Of("it stays as it is now", outlook.AsNow, names),
                    AheadDays.Of("learning goes on as so far", outlook.Learning, names),
                ]
                : [],
            [.. found.Standing.Gaps.Where(gap => gap is not RowNotFull).Select(gap => Say.Reason(gap, names))]
        );
}

/// <summary>Two days, under one answer to how it goes on.</summary>
public sealed record AheadDays(string If, string Half, string Most)
{
    internal static AheadDays Of(string when, ForeseenDays days, Names names) =>
        new(when, Day(days.Half, names), Day(days.Most, names));

    private static string Day(DateOnly? day, Names names) => day is { } there ? names.Time.Date(there) : "not within two years";
}

/// <summary>What is said of a row besides its days.</summary>
internal static class ForecastWords
{
    public static string Of(AheadFound found) =>
        found switch
        {
            { Outlook: { IsOffCourse: true } outlook } =>
                $"{Counts.OutOf(outlook.Unsuitable, outlook.Rated)} rated grooms needed fixing. At that rate the row does not fill. "
                    + "This is the moment to talk about what would help: another coat first, another pair of eyes, a module read again.",
            { Outlook: { } outlook } =>
                $"{Counts.OutOf(outlook.Unsuitable, outlook.Rated)} rated grooms needed fixing. About {Often(outlook.PerWeek)} with a senior.",
            _ when found.Standing.Tally.Row >= found.Need => "The row is full.",
            _ =>
                $"After {Outlook.LeastRated} rated grooms a day can be named. So far there {(found.Standing.Tally.Rated == 1 ? "is" : "are")} {found.Standing.Tally.Rated}.",
        };

    private static string Often(double perWeek) =>
        perWeek >= 1
            ? $"{Math.Round(perWeek).ToString(SalonTime.Culture)} such {(Math.Round(perWeek) == 1 ? "groom" : "grooms")} a week"
            : $"one such groom in {Math.Ceiling(1 / perWeek).ToString(SalonTime.Culture)} weeks";
}
