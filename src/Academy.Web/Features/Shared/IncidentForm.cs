using System.Globalization;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace Academy.Web.Features.Shared;

/// <summary>An incident as somebody types it, on its own page or inside a sign-off.</summary>
public sealed class IncidentForm
{
    private const int MostLetters = 2000;

    public Guid Id { get; set; }

    public Guid? Person { get; set; }

    public string? Kind { get; set; }

    public string? Severity { get; set; }

    public string? Site { get; set; }

    public IList<string> During { get; set; } = [];

    public string? Vet { get; set; }

    public string? NoticedOn { get; set; }

    public string? NoticedAt { get; set; }

    public string? WhatHappened { get; set; }

    public string? WhatWasDone { get; set; }

    /// <summary>Whether anything was filled in that makes it a report; day and time stand there from the beginning.</summary>
    public bool IsFilledIn =>
        !string.IsNullOrEmpty(Kind)
        || !string.IsNullOrEmpty(Severity)
        || !string.IsNullOrWhiteSpace(WhatHappened)
        || !string.IsNullOrWhiteSpace(WhatWasDone);

    public static IncidentForm Empty(Guid id, Guid? person, SalonTime time) =>
        new()
        {
            Id = id,
            Person = person,
            NoticedOn = time.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            NoticedAt = time.Clock(time.Now).Split(' ')[0],
        };

    /// <summary>As far as it can be read, for showing what it would do; null before kind and severity are chosen.</summary>
    public IncidentDraft? Sketch(Groom groom, SalonTime time) =>
        Typed.Choice<IncidentKind>(Kind) is { } kind && Typed.Choice<Severity>(Severity) is { } severity
            ? Draft(kind, severity, groom, NoticedMoment(time) ?? time.Now)
            : null;

    /// <summary>The report; null with what is wrong beside its fields where it cannot be read.</summary>
    public IncidentDraft? Read(Groom groom, SalonTime time, ModelStateDictionary wrong, string prefix)
    {
        var before = wrong.ErrorCount;
        var kind = Typed.Choice<IncidentKind>(Kind);
        var severity = Typed.Choice<Severity>(Severity);
        if (kind is null)
            Say("Kind", "Choose what it was.");
        if (severity is null)
            Say("Severity", "Choose how bad it was for the dog.");
        if (Person is null && groom.Doers.Skip(1).Any())
            Say("Person", "Choose who was grooming.");
        if (NoticedMoment(time) is null)
            Say("NoticedOn", "Noticed: write a day such as 14/7/2026 and a time such as 9:02.");
        foreach (var (field, text) in new[] { ("WhatHappened", WhatHappened), ("WhatWasDone", WhatWasDone) })
            if (text?.Length > MostLetters)
                Say(field, $"Write at most {MostLetters} letters here.");
        return wrong.ErrorCount == before ? Draft(kind!.Value, severity!.Value, groom, NoticedMoment(time)!.Value) : null;

        void Say(string field, string words) => wrong.AddModelError($"{prefix}.{field}", words);
    }

    private DateTimeOffset? NoticedMoment(SalonTime time) =>
        Typed.Day(NoticedOn) is { } day && Typed.Clock(NoticedAt) is { } clock ? time.Moment(day, clock) : null;

    private IncidentDraft Draft(IncidentKind kind, Severity severity, Groom groom, DateTimeOffset noticedAt) =>
        new(
            new IncidentId(Id),
            Person is { } person ? new PersonId(person) : groom.Doers.First(),
            noticedAt,
            kind,
            severity,
            Typed.Choice<BodySite>(Site) ?? BodySite.None,
            During
                .Select(code => new SkillCode(code))
                .Where(code => groom.Parts.Any(part => part.Technique == code))
                .Distinct()
                .ToListed(),
            Typed.Choice<VetContact>(Vet) ?? VetContact.NotNeeded,
            new Words(WhatHappened?.Trim() ?? ""),
            new Words(WhatWasDone?.Trim() ?? "")
        );
}

/// <summary>The choices of that form for one groom.</summary>
/// <param name="People">Who was grooming, where there were several; none where it is plain.</param>
/// <param name="Bite">A bite was chosen: what happened to a person is not described here.</param>
public sealed record IncidentChoices(
    IReadOnlyList<Pick> People,
    IReadOnlyList<Pick> Kinds,
    IReadOnlyList<Pick> Severities,
    IReadOnlyList<Pick> Sites,
    IReadOnlyList<Pick> During,
    IReadOnlyList<Pick> Vet,
    bool Bite
)
{
    public static IncidentChoices Nothing { get; } = new([], [], [], [], [], [], Bite: false);

    public static IncidentChoices Of(IncidentForm form, Groom groom, Names names)
    {
        var doers = groom.Doers.ToList();
        return new(
            doers.Count > 1 ? [.. doers.Select(doer => new Pick(doer.Value.ToString(), names.Of(doer)))] : [],
            Say.Picks<IncidentKind>(Say.Word),
            Say.Picks<Severity>(Say.Word, Say.Note),
            Say.Picks<BodySite>(Say.Word),
            [
                .. groom
                    .Parts.Select(part => part.Technique)
                    .Distinct()
                    .Select(technique => new Pick(technique.Value, names.Of(technique))),
            ],
            Say.Picks<VetContact>(Say.Word),
            form.Kind == nameof(IncidentKind.Bite)
        );
    }
}

/// <summary>A page that has the incident form in it.</summary>
public interface IIncidentPage
{
    IncidentForm Incident { get; }

    IncidentChoices Choices { get; }
}
