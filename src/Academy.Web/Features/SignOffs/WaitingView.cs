using System.Globalization;
using Academy.Competence;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.SignOffs;

/// <summary>One groom that waits.</summary>
/// <param name="Late">Its time is past.</param>
public sealed record WaitingRow(string Title, string? Coat, string Groomed, string Left, bool Late, string? Note, string Href);

/// <summary>Grooms that wait for one reason.</summary>
/// <param name="Verb">What is done with one of them.</param>
/// <param name="More">Where the next of them are; null where there are no more.</param>
public sealed record WaitingList(string Heading, string Explains, string Verb, IReadOnlyList<WaitingRow> Rows, string? More);

/// <summary>What was read for the page.</summary>
public sealed record WaitingFound(WaitingPage Named, WaitingPage Others, WaitingPage Alone, WaitingPage Late)
{
    public static WaitingFound None { get; } = new(WaitingPage.None, WaitingPage.None, WaitingPage.None, WaitingPage.None);
}

/// <summary>What waits for a senior's sign-off, the oldest offered first.</summary>
public sealed record WaitingView(string Heading, WaitingRow? Next, IReadOnlyList<WaitingList> Lists, bool IsFurther)
{
    public static WaitingView Of(
        WaitingFound found,
        PersonId viewer,
        IReadOnlyCollection<DateOnly> daysIn,
        SkillKinds kinds,
        Names names,
        bool isFurther
    )
    {
        var named = List("named", "You were named as watching", "", "Sign off", found.Named);
        var others = List(
            "others",
            "Others that you may judge",
            "If the senior named was away and you really watched, you sign.",
            "Sign off",
            found.Others
        );
        var alone = List(
            "alone",
            "Done alone, the finished dog to inspect",
            $"The first {Inspecting.AllOfTheFirst} after a clearance are all inspected, then at least 1 in {Inspecting.ThenOneIn}.",
            "Inspect",
            found.Alone
        );
        var late = List(
            "late",
            "Late",
            "Still to be signed and shown, but they do not count unless the owner says so.",
            "Sign late",
            found.Late
        );
        var next = isFurther ? null : named.Rows.Concat(others.Rows).FirstOrDefault();
        return new(
            HeadingOf(found),
            next,
            [.. new[] { named, others, alone, late }.Select(list => Without(list, next)).Where(list => list.Rows.Count > 0)],
            isFurther
        );

        WaitingList List(string name, string heading, string explains, string verb, WaitingPage page) =>
            new(
                heading,
                explains,
                verb,
                [.. page.Lines.Select(line => RowOf(line, viewer, daysIn, kinds, names))],
                page.HasMore ? $"{Paths.SignOffs}?list={name}&after={Written(page.Lines[^1])}" : null
            );
    }

    /// <summary>The line after which a list goes on, as an address carries it.</summary>
    public static After? Read(string? written) =>
        written?.Split('_') is [var ticks, var groom, var person]
        && long.TryParse(ticks, NumberStyles.None, CultureInfo.InvariantCulture, out var at)
        && at <= DateTimeOffset.MaxValue.UtcTicks
        && Guid.TryParse(groom, out var ofGroom)
        && Guid.TryParse(person, out var ofPerson)
            ? new After(new DateTimeOffset(at, TimeSpan.Zero), ofGroom, ofPerson)
            : null;

    private static string Written(WaitingLine line) =>
        string.Create(CultureInfo.InvariantCulture, $"{line.EndedAt.UtcTicks}_{line.Groom}_{line.Person}");

    private static string HeadingOf(WaitingFound found) =>
        (found.Named.Lines.Count, found.Others.Lines.Count + found.Alone.Lines.Count + found.Late.Lines.Count) switch
        {
            (0, 0) => "Nothing waits for your sign-off",
            (0, _) => "No groom waits for you by name",
            (1, _) => "1 groom waits for your sign-off",
            var (count, _) when found.Named.HasMore => $"More than {count} grooms wait for your sign-off",
            var (count, _) => $"{count} grooms wait for your sign-off",
        };

    private static WaitingList Without(WaitingList list, WaitingRow? row) =>
        list with
        {
            Rows = [.. list.Rows.Where(one => one != row)],
        };

    private static WaitingRow RowOf(
        WaitingLine line,
        PersonId viewer,
        IReadOnlyCollection<DateOnly> daysIn,
        SkillKinds kinds,
        Names names
    )
    {
        var until = SigningOff.OnTimeUntil(line.EndedAt, daysIn, names.Time.Now, names.Time.Zone);
        var coat = kinds.Find(new SkillCode(line.Coat));
        return new(
            $"{names.Of(new PersonId(line.Person))} with {line.Dog}",
            coat is null ? null : CoatSwatch.Of(coat),
            $"{line.Breed}, {coat?.Name ?? line.Coat}. {names.Time.Day(line.EndedAt)}, until {names.Time.Clock(line.EndedAt)}",
            Say.Capital(names.Time.Left(until)),
            until <= names.Time.Now,
            Note(line, viewer, names),
            Paths.SignOff(line.Groom, line.Person)
        );
    }

    private static string? Note(WaitingLine line, PersonId viewer, Names names)
    {
        var named =
            line.Watcher is { } watcher && watcher != viewer.Value ? $"{names.Of(new PersonId(watcher))} was named." : null;
        var reported = line.HasIncident ? "Something was reported on it." : null;
        var notes = new[] { named, reported }.OfType<string>().ToList();
        return notes.Count == 0 ? null : string.Join(' ', notes);
    }
}
