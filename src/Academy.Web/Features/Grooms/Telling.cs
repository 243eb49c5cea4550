using System.Globalization;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Trade;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace Academy.Web.Features.Grooms;

/// <summary>What was read from the form: the groom, an incident where one was described, a new room reading where one was taken.</summary>
public sealed record ToldGroom(Groom Groom, IncidentDraft? Incident, RoomReading? NewReading)
{
    /// <summary>Groom, flag, incident and reading as one decision: kept together, or refused with every reason.</summary>
    public Decision Decide(Table table, KnownThen then)
    {
        var decision = Logging
            .Log(Groom, table.Story, table.Me, table.Now, table.Book.Zone)
            .And(Flagging.Flag(Groom, table.Flags, then));
        if (Incident is not null)
            decision = decision.And(Reporting.Report(Incident, Groom, table.Me, table.Book.House, table.Now));
        return NewReading is null ? decision : decision.And(Keeping.ReadRoom(NewReading, room: "", table.Now));
    }
}

/// <summary>Reads a groom from its form. What cannot be read is said beside its field; what may not be is for the rules to say.</summary>
public sealed class Telling(LogForm form, Table table, ModelStateDictionary wrong)
{
    private const int MostLetters = 2000;
    private static readonly TimeSpan KeptAtMost = TimeSpan.FromDays(14);

    /// <summary>The groom; null where the form cannot be read as one.</summary>
    public ToldGroom? Read()
    {
        // Everything is read, also after the first thing that cannot be: nobody mends a form line by line.
        var (from, until) = ReadTimes() ?? (table.Now, table.Now);
        var groom = ReadGroom(from, until);
        var incident = form.HasIncident ? ReadIncident(groom) : null;
        return wrong.IsValid ? new ToldGroom(groom, incident, groom.Room is { } room && !IsKnown(room) ? room : null) : null;
    }

    private Groom ReadGroom(DateTimeOffset from, DateTimeOffset until)
    {
        var coat = Skill(SkillKind.Coat, form.Coat, nameof(form.Coat), "Coat: choose the one on the dog in front of you");
        var told = new Groom(
            table.Groom,
            table.Dog.Id,
            table.Me.Id,
            ReadWatcher(),
            from,
            until,
            table.Story?.Groom.Breed ?? table.Dog.Breed,
            coat ?? default,
            string.IsNullOrEmpty(form.SecondCoat) ? null : Skill(SkillKind.Coat, form.SecondCoat, nameof(form.SecondCoat)),
            ReadCondition(),
            ReadFinisher(),
            ReadParts(),
            ReadBlades(),
            Skills(SkillKind.Hazard, form.Hazards, nameof(form.Hazards)),
            Consents: [],
            ReadChecks(SalonDay.Of(from, table.Book.Zone)),
            Every<Sign>(form.Signs, nameof(form.Signs)),
            ReadRoom(until),
            form.EndedEarly,
            form.Phrases.Where(IsPhrase).Distinct(StringComparer.Ordinal).ToListed(),
            ReadWords(form.Notes, nameof(form.Notes), "Words")
        );
        var asked = ConsentAsked.All.Where(consent => consent.AppliesTo(told)).Select(consent => consent.Consent);
        return told with { Consents = asked.Where(consent => form.Consents.Contains(consent.ToString())).ToListed() };
    }

    private IncidentDraft ReadIncident(Groom groom) =>
        new(
            new IncidentId(form.Incident),
            form.Work == Work.Shared ? Somebody(form.Concerned, nameof(form.Concerned)) ?? table.Me.Id : table.Me.Id,
            groom.EndedAt,
            One<IncidentKind>(form.Kind, nameof(form.Kind), "What happened: choose one"),
            One<Severity>(form.Severity, nameof(form.Severity), "How bad it was: choose one, or near miss"),
            One<BodySite>(form.Site, nameof(form.Site), "Where on the dog: choose one"),
            Skills(SkillKind.Technique, form.During, nameof(form.During)),
            One<VetContact>(form.Vet, nameof(form.Vet), "Vet: choose one"),
            ReadWords(form.WhatHappened, nameof(form.WhatHappened), "What happened"),
            ReadWords(form.WhatWasDone, nameof(form.WhatWasDone), "What was done")
        );

    private PersonId? ReadWatcher()
    {
        if (form.Watcher == LogForm.Nobody)
            return null;
        if (string.IsNullOrEmpty(form.Watcher))
            Say(nameof(form.Watcher), "Who watched: choose the senior, or nobody");
        return Somebody(form.Watcher, nameof(form.Watcher));
    }

    private PersonId? ReadFinisher() =>
        form.Work switch
        {
            Work.Whole => table.Me.Id,
            Work.Shared => Somebody(form.Finisher, nameof(form.Finisher)),
            _ => null,
        };

    private Listed<Part> ReadParts() =>
        Skills(SkillKind.Technique, form.Techniques, nameof(form.Techniques))
            .Select(technique => new Part(technique, DoerOf(technique)))
            .ToListed();

    private PersonId DoerOf(SkillCode technique) =>
        form.Work == Work.Shared && form.Doers.TryGetValue(technique.Value, out var doer)
            ? Somebody(doer, nameof(form.Doers)) ?? table.Me.Id
            : table.Me.Id;

    // Blades are asked only where a clipper is used; what was ticked before a technique was taken away is not told.
    private Listed<string> ReadBlades() =>
        Blades.TakenFor.Any(technique => form.Techniques.Contains(technique.Value, StringComparer.Ordinal))
            ? form.Blades.Where(IsBlade).Distinct(StringComparer.Ordinal).ToListed()
            : [];

    private bool IsBlade(string number) =>
        Blades.Common.Contains(number) || table.Story is { Groom.Blades: var before } && before.Contains(number);

    private bool IsPhrase(string code) =>
        QuickPhrases.Groom.Any(phrase => phrase.Code == code)
        || table.Story is { Groom.Phrases: var before } && before.Contains(code);

    private CoatCondition ReadCondition() =>
        One<CoatCondition>(form.Condition, nameof(form.Condition), "Condition: choose how it came");

    private Listed<CheckMade> ReadChecks(DateOnly day)
    {
        var made = form.StampedWhat.Zip(form.StampedAt, (what, at) => (What: Chosen.Of<WelfareCheck>(what), At: Typed.Clock(at)));
        var (readable, unreadable) = (new List<CheckMade>(), 0);
        foreach (var (what, at) in made)
        {
            if (what is { } check && at is { } clock)
                readable.Add(new CheckMade(check, At(day, clock)));
            else
                unreadable++;
        }

        if (unreadable > 0)
            Say(nameof(form.StampedAt), "Welfare checks: write each time like 9:02, or undo the check");
        return readable.ToListed();
    }

    private RoomReading? ReadRoom(DateTimeOffset until)
    {
        var tenths = Parsed(
            form.Temperature,
            Typed.TenthsC,
            nameof(form.Temperature),
            "Temperature: write degrees, such as 24,5"
        );
        var percent = Parsed(form.Humidity, Typed.Percent, nameof(form.Humidity), "Humidity: write whole percent, 0 to 100");
        if (tenths is null && percent is not null && string.IsNullOrWhiteSpace(form.Temperature))
            Say(nameof(form.Temperature), "Temperature: write it too, or leave humidity empty");
        if (tenths is null)
            return null;
        var read = new RoomReading(until < table.Now ? until : table.Now, tenths.Value, percent);
        return new[] { table.Story?.Groom.Room, table.Offered }.OfType<RoomReading>().FirstOrDefault(known => IsSame(known, read))
            ?? read;
    }

    private bool IsKnown(RoomReading reading) => reading == table.Offered || reading == table.Story?.Groom.Room;

    private static bool IsSame(RoomReading one, RoomReading other) =>
        one.TenthsC == other.TenthsC && one.HumidityPct == other.HumidityPct;

    private (DateTimeOffset From, DateTimeOffset Until)? ReadTimes()
    {
        var errors = wrong.ErrorCount;
        var day = Parsed(form.Day, Typed.Day, nameof(form.Day), "Day: write a date such as 14/7/2026");
        var start = Parsed(form.Start, Typed.Clock, nameof(form.Start), "Start: write a time such as 9:02");
        var end = Parsed(form.End, Typed.Clock, nameof(form.End), "End: write a time such as 10:15");
        var minutes = Parsed(form.Minutes, Typed.Minutes, nameof(form.Minutes), "How long: write minutes, such as 75, or 1:15");
        if (wrong.ErrorCount > errors || ReadMoment() is not { } moment)
            return null;

        var on = day ?? SalonDay.Of(table.Story?.Groom.StartedAt ?? table.Start?.At ?? moment, table.Book.Zone);
        var from =
            start is { } clock ? Kept(table.Story?.Groom.StartedAt, At(on, clock))
            : day is null ? table.Start?.At
            : null;
        var until =
            end is { } last ? Kept(table.Story?.Groom.EndedAt, At(on, last))
            : from is { } began && minutes is { } took ? began.AddMinutes(took)
            : on == SalonDay.Of(moment, table.Book.Zone) ? moment
            : (DateTimeOffset?)null;
        return Complete(from ?? until - Span(minutes), until);
    }

    private (DateTimeOffset, DateTimeOffset)? Complete(DateTimeOffset? from, DateTimeOffset? until)
    {
        if (until is null)
            Say(nameof(form.End), "End: write when it ended that day, or how long it took");
        else if (from is null)
            Say(nameof(form.Minutes), "How long: write the minutes it took, or when it started");
        return from is { } began && until is { } ended ? (began, ended) : null;
    }

    // "Until now" means when it was saved. A device that had no signal says when that was; its clock may be off, never ahead.
    private DateTimeOffset? ReadMoment()
    {
        if (string.IsNullOrEmpty(form.SavedAt))
            return table.Now;
        if (!DateTimeOffset.TryParse(form.SavedAt, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var saved))
            return table.Now;
        if (table.Now - saved > KeptAtMost && !form.HasTimes)
        {
            Say(nameof(form.Day), "Day: this was kept on a device for more than 14 days; write its day and times");
            return null;
        }

        return saved < table.Now ? saved.ToUniversalTime() : table.Now;
    }

    private static TimeSpan? Span(int? minutes) => minutes is { } took ? TimeSpan.FromMinutes(took) : null;

    // A time field knows no seconds: where it still says what was told before, what was told before holds.
    private DateTimeOffset Kept(DateTimeOffset? before, DateTimeOffset typed) =>
        before is { } known
        && At(SalonDay.Of(known, table.Book.Zone), Typed.Clock(LogForm.Clock(known, table.Book.Zone))!.Value) == typed
            ? known
            : typed;

    private DateTimeOffset At(DateOnly day, TimeOnly clock)
    {
        var local = day.ToDateTime(clock);
        var real = table.Book.Zone.IsInvalidTime(local) ? local.AddHours(1) : local;
        return new DateTimeOffset(real, table.Book.Zone.GetUtcOffset(real)).ToUniversalTime();
    }

    private PersonId? Somebody(string? id, string field)
    {
        if (string.IsNullOrEmpty(id))
            return null;
        if (Guid.TryParse(id, out var person) && table.Book.Find(new PersonId(person)) is { } found)
            return found.Id;
        Say(field, "Choose somebody who is in the salon’s book");
        return null;
    }

    private SkillCode? Skill(SkillKind kind, string? code, string field, string otherwise = "Choose one from the list")
    {
        if (!string.IsNullOrEmpty(code) && table.Book.Find(new SkillCode(code)) is { } skill && skill.Kind == kind)
            return skill.Code;
        Say(field, otherwise);
        return null;
    }

    private Listed<SkillCode> Skills(SkillKind kind, IEnumerable<string> codes, string field) =>
        codes.Distinct(StringComparer.Ordinal).Select(code => Skill(kind, code, field)).OfType<SkillCode>().ToListed();

    private T One<T>(string? sent, string field, string otherwise)
        where T : struct, Enum
    {
        var one = Chosen.Of<T>(sent);
        if (one is null)
            Say(field, otherwise);
        return one ?? default;
    }

    private Listed<T> Every<T>(IEnumerable<string> sent, string field)
        where T : struct, Enum
    {
        var every = sent.Distinct(StringComparer.Ordinal).Select(one => Chosen.Of<T>(one)).ToList();
        if (every.Contains(null))
            Say(field, "Choose from the list");
        return every.OfType<T>().ToListed();
    }

    private T? Parsed<T>(string? typed, Func<string?, T?> read, string field, string otherwise)
        where T : struct
    {
        var value = read(typed);
        if (value is null && !string.IsNullOrWhiteSpace(typed))
            Say(field, otherwise);
        return value;
    }

    private Words ReadWords(string? typed, string field, string label)
    {
        if (typed?.Length > MostLetters)
            Say(field, $"{label}: at most {MostLetters} letters");
        return new Words(typed?.Trim() ?? "");
    }

    private void Say(string field, string words) => wrong.AddModelError($"Form.{field}", words);
}
