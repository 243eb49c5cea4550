using System.Globalization;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;

namespace Academy.Web.Features.Grooms;

/// <summary>Who did the work.</summary>
public enum Work
{
    /// <summary>The teller did the whole groom, from start to finish.</summary>
    Whole,

    /// <summary>The teller did the parts ticked, not the whole finish.</summary>
    Parts,

    /// <summary>Several people did parts.</summary>
    Shared,
}

/// <summary>A groom as somebody taps and types it: everything may be unreadable, and comes back as it was.</summary>
public sealed class LogForm
{
    /// <summary>What the form sends for "nobody watched".</summary>
    public const string Nobody = "nobody";

    public Guid Operation { get; set; }

    public Guid By { get; set; }

    public Guid Dog { get; set; }

    public Guid Incident { get; set; }

    public long Version { get; set; }

    public string? Watcher { get; set; }

    public Work Work { get; set; }

    /// <summary>Technique to person, where the work was shared.</summary>
    public IDictionary<string, string?> Doers { get; set; } = new Dictionary<string, string?>(StringComparer.Ordinal);

    /// <summary>Who did the whole finish where the work was shared; empty for nobody alone.</summary>
    public string? Finisher { get; set; }

    public string? Coat { get; set; }

    public string? SecondCoat { get; set; }

    public string? Condition { get; set; }

    public IList<string> Techniques { get; set; } = [];

    public IList<string> Blades { get; set; } = [];

    public IList<string> Hazards { get; set; } = [];

    public IList<string> Consents { get; set; } = [];

    /// <summary>Welfare checks that were made, each with its time at the same place of <see cref="StampedAt"/>.</summary>
    public IList<string> StampedWhat { get; set; } = [];

    public IList<string?> StampedAt { get; set; } = [];

    public IList<string> Signs { get; set; } = [];

    public string? Temperature { get; set; }

    public string? Humidity { get; set; }

    public string? Minutes { get; set; }

    public string? Day { get; set; }

    public string? Start { get; set; }

    public string? End { get; set; }

    public bool EndedEarly { get; set; }

    public IList<string> Phrases { get; set; } = [];

    public string? Notes { get; set; }

    public string? Kind { get; set; }

    public string? Severity { get; set; }

    public string? Site { get; set; }

    public IList<string> During { get; set; } = [];

    public string Vet { get; set; } = nameof(VetContact.NotNeeded);

    /// <summary>Who was grooming when it happened, where the work was shared.</summary>
    public string? Concerned { get; set; }

    public string? WhatHappened { get; set; }

    public string? WhatWasDone { get; set; }

    /// <summary>The teller has seen that this was more than she may do alone, and tells it all the same.</summary>
    public bool AsItWas { get; set; }

    /// <summary>When "save" was pressed on a device that had no signal; the groom ended then, not when the signal came back.</summary>
    public string? SavedAt { get; set; }

    /// <summary>Whether anything of an incident is filled in.</summary>
    public bool HasIncident =>
        new[] { Kind, Severity, Site, WhatHappened, WhatWasDone }.Any(typed => !string.IsNullOrWhiteSpace(typed));

    /// <summary>Whether another day or other times than "until now" are typed.</summary>
    public bool HasTimes => new[] { Day, Start, End }.Any(typed => !string.IsNullOrWhiteSpace(typed));

    /// <summary>Every code that is chosen: what opens further questions and cautions.</summary>
    public IEnumerable<string> Chosen =>
        new[] { Coat, SecondCoat, Condition, Work.ToString(), Watcher, EndedEarly ? nameof(EndedEarly) : null }
            .OfType<string>()
            .Concat(Techniques)
            .Concat(Blades)
            .Concat(Hazards)
            .Concat(Signs)
            .Concat(StampedWhat);

    /// <summary>Writes the time of a check; a check other than the muzzle is written once.</summary>
    public void Stamp(WelfareCheck check, DateTimeOffset now, TimeZoneInfo zone)
    {
        if (check < WelfareCheck.MuzzleOn && StampedWhat.Contains(check.ToString()))
            return;
        StampedWhat = [.. StampedWhat, check.ToString()];
        StampedAt = [.. StampedAt, Clock(now, zone)];
    }

    /// <summary>Takes the stamp at this place away again.</summary>
    public void Unstamp(int at)
    {
        StampedWhat = [.. StampedWhat.Where((_, place) => place != at)];
        StampedAt = [.. StampedAt.Where((_, place) => place != at)];
    }

    /// <summary>The form as it opens: what is usual for this dog and this person; nothing that nobody has seen yet.</summary>
    public static LogForm Usual(Table table, Guid operation, Guid incident)
    {
        var dog = table.Dog;
        return new()
        {
            Operation = operation,
            By = table.Me.Id.Value,
            Dog = dog.Id.Value,
            Incident = incident,
            Version = table.Version,
            Watcher = table.Start?.Watcher?.Value.ToString() ?? (table.Me.MayJudgeByRole ? Nobody : null),
            Coat = (dog.Coat ?? table.Last?.Coat)?.Value,
            SecondCoat = dog.SecondCoat?.Value,
            Techniques = [.. (table.Last?.Parts ?? []).Select(part => part.Technique.Value).Distinct(StringComparer.Ordinal)],
            Hazards = [.. table.HazardsNow.Select(hazard => hazard.Value)],
            Temperature = Celsius(table.Offered),
            Humidity = Percent(table.Offered),
        };
    }

    /// <summary>The form as it was told, to be put right.</summary>
    public static LogForm Told(Groom told, long version, Guid operation, Guid incident, TimeZoneInfo zone) =>
        new()
        {
            Operation = operation,
            By = told.By.Value,
            Dog = told.Dog.Value,
            Incident = incident,
            Version = version,
            Watcher = told.Watcher?.Value.ToString() ?? Nobody,
            Work =
                told.Parts.Any(part => part.Doer != told.By) || told.WholeFinishBy is { } finisher && finisher != told.By
                    ? Work.Shared
                : told.WholeFinishBy is null ? Work.Parts
                : Work.Whole,
            Doers = told
                .Parts.DistinctBy(part => part.Technique)
                .ToDictionary(part => part.Technique.Value, string? (part) => part.Doer.Value.ToString(), StringComparer.Ordinal),
            Finisher = told.WholeFinishBy?.Value.ToString(),
            Coat = told.Coat.Value,
            SecondCoat = told.SecondCoat?.Value,
            Condition = told.Condition.ToString(),
            Techniques = [.. told.Parts.Select(part => part.Technique.Value).Distinct(StringComparer.Ordinal)],
            Blades = [.. told.Blades],
            Hazards = [.. told.Hazards.Select(hazard => hazard.Value)],
            Consents = [.. told.Consents.Select(consent => consent.ToString())],
            StampedWhat = [.. told.Checks.Select(made => made.Check.ToString())],
            StampedAt = [.. told.Checks.Select(made => Clock(made.At, zone))],
            Signs = [.. told.Signs.Select(sign => sign.ToString())],
            Temperature = Celsius(told.Room),
            Humidity = Percent(told.Room),
            Day = SalonDay.Of(told.StartedAt, zone).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Start = Clock(told.StartedAt, zone),
            End = Clock(told.EndedAt, zone),
            EndedEarly = told.EndedEarly,
            Phrases = [.. told.Phrases],
            Notes = told.Notes.Text,
        };

    /// <summary>A moment as a time field holds it.</summary>
    public static string Clock(DateTimeOffset at, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(at, zone).ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string? Celsius(RoomReading? reading) =>
        reading is null ? null : (reading.TenthsC / 10m).ToString("0.0", CultureInfo.InvariantCulture);

    private static string? Percent(RoomReading? reading) => reading?.HumidityPct?.ToString(CultureInfo.InvariantCulture);
}
