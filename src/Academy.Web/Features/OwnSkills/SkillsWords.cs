using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Features.OwnSkills;

/// <summary>The sentences of a person's page of skills that are not a rule's.</summary>
internal static class SkillsWords
{
    /// <summary>"You may do 4 of 35 skills alone".</summary>
    public static string Heading(Person person, bool isOwn, IReadOnlyCollection<Standing> standings)
    {
        var alone = standings.Count(standing => standing.Kind == StandingKind.Alone);
        var who = isOwn ? "You" : person.Name;
        return standings.Count == 0
            ? $"{who} {(isOwn ? "do" : "does")} not work here now"
            : $"{who} may do {Counts.OutOf(alone, standings.Count)} skills alone";
    }

    /// <summary>What being alone is limited to, and until when it holds if that is soon.</summary>
    public static IReadOnlyList<string> Alone(Standing standing, Names names)
    {
        return [.. Within(), .. Say.CatchUps(standing, names), .. Say.Why(standing, names)];

        IEnumerable<string> Within()
        {
            if (Say.Limits(standing.Limits, names) is { Count: > 0 } limits)
                yield return $"{Say.Capital(string.Join(", ", limits))}.";
            if (standing.IsWatched)
                yield return "A senior stands beside the next ones.";
            if (standing.OtherDaysLeft(names.Time.Today) is { } days)
                yield return $"{Say.Capital(CellNote.Left(days))}: it holds until {names.Time.Date(standing.LastDay()!.Value)}.";
        }
    }

    public static string Due(ModuleFound module, DateOnly? until, Names names) =>
        (module.Holds, until) switch
        {
            (true, _) when module.AsksToCatchUp => Say.CatchUpBy(module, names.Time),
            (true, { } last) when module.IsLastTry =>
                $"refresher once not passed; a second one pauses this; due again by {names.Time.Date(last.AddDays(1))}",
            (true, { } last) => $"passed; due again by {names.Time.Date(last.AddDays(1))}",
            (false, { } last) when last >= names.Time.Today => $"{Say.Word(module.State)}; due by {names.Time.Date(last)}",
            _ => Say.Word(module.State),
        };

    /// <summary>"for wool and wire"; more than four are counted.</summary>
    public static string For(IEnumerable<string> skills)
    {
        var all = skills.ToList();
        return all.Count <= 4 ? $"for {Counts.And(all)}" : $"for {Counts.And([.. all.Take(3), $"{all.Count - 3} more"])}";
    }

    public static string Result(GroomLine line, GroomStory? story, SignOff? signed, Names names)
    {
        var verdict = signed?.Counted.FirstOrDefault(counted => counted.Skill.Value == line.Coat)?.Verdict;
        var said = (signed, verdict, line.Watcher) switch
        {
            (null, _, { } watcher) => $"waits for {names.Of(new Competence.PersonId(watcher))}",
            (null, _, null) => "groomed alone, not inspected",
            (_, { } found, _) => Say.Word(found),
            _ => "signed off",
        };
        var late = signed is not null && story is not null && !story.Counts(signed) ? ", does not count" : "";
        return $"{said}{late}{(line.HasIncident ? ", something happened" : "")}";
    }

    /// <summary>What the senior tapped and wrote: what to practise next.</summary>
    public static string? ToJunior(SignOff signed)
    {
        var said = signed
            .Phrases.Select(QuickPhrases.Of)
            .Append(signed.ToJunior.Text)
            .Where(words => !string.IsNullOrWhiteSpace(words));
        return string.Join(". ", said) is { Length: > 0 } words ? words : null;
    }
}
