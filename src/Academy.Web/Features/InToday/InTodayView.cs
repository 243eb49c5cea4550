using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Web.Wording;

namespace Academy.Web.Features.InToday;

/// <summary>Today's list, with a box where this person may tick.</summary>
public sealed record InTodayView(string Day, string Heading, IReadOnlyList<PresentRow> People)
{
    public static InTodayView Of(SalonBook book, IReadOnlySet<PersonId> isIn, Person by, SalonTime time)
    {
        var people = book.People.Where(person => person.WorksOn(time.Today)).ToList();
        return new InTodayView(
            time.Day(time.Today),
            HeadingOf(people.Where(person => isIn.Contains(person.Id)).Select(person => person.Name).ToList()),
            [.. people.Select(person => Row(person, isIn.Contains(person.Id), by))]
        );
    }

    private static string HeadingOf(List<string> names) =>
        names.Count switch
        {
            0 => "Nobody is ticked in yet",
            1 => $"{names[0]} is in",
            > 3 and var many => $"{many} people are in",
            _ => $"{Counts.And(names)} are in",
        };

    private static PresentRow Row(Person person, bool isIn, Person by) =>
        new(
            person.Id.Value,
            person.Name,
            Say.Word(person.Role) + (person.Id == by.Id ? ", you" : ""),
            isIn,
            MayTick: by.MayJudgeByRole || by.IsDeputy || by.Id == person.Id
        );
}

/// <summary>One person of the list.</summary>
public sealed record PresentRow(Guid Id, string Name, string Role, bool IsIn, bool MayTick);
