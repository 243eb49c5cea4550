using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Incidents;

/// <summary>What reporting will do, in view beside the button.</summary>
public sealed record Outcome(string Will, IReadOnlyList<string> Sentences, IReadOnlyList<Effect> Rows)
{
    public static Outcome Nothing { get; } =
        new("Choose what it was and how bad", ["Near misses are welcome here: they harmed nobody and never lower anything."], []);

    public static Outcome Of(IncidentDraft draft, HouseRules house, IReadOnlyList<Foreseen> foreseen, Names names)
    {
        var isCritical = house.IsCritical(draft.Kind, draft.Severity);
        var stopped = foreseen.Where(one => one.WouldStop).ToList();
        return new(
            stopped.Count > 0 ? Say.StopsAtOnce(stopped, names)
                : isCritical ? "Critical: the owner reviews it"
                : "Stops nothing",
            Say.Stops(isCritical, draft.Severity, foreseen, names),
            Effect.All(foreseen, names)
        );
    }
}

/// <summary>The page on which something is reported.</summary>
public sealed record ReportView(string Title, string Groomed, IReadOnlyList<string> Reported, Outcome Outcome)
{
    public static ReportView Of(OneGroom one, Outcome outcome) =>
        new(one.Title, one.Groomed, [.. one.Story.Incidents.Select(told => Line(told.Incident, one.Names))], outcome);

    public static string Kept(OneGroom one) => $"Reported on {one.Dog}. The owner sees it at once.";

    private static string Line(Incident incident, Names names) =>
        $"{Say.Capital(names.Time.Ago(incident.ReportedAt))} {names.Of(incident.ReportedBy)} reported: {Say.Word(incident.Kind)}, {Say.Word(incident.Severity)}. {incident.WhatHappened.Text}";
}
