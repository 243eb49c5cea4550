namespace Academy.Competence.Standings;

/// <summary>What another threshold would change for one person in one skill on the same day.</summary>
/// <param name="Person">For whom.</param>
/// <param name="Skill">In what; a coat's threshold may also move a skill that comes on top of it.</param>
/// <param name="From">Where she stands now.</param>
/// <param name="To">Where she would stand.</param>
public sealed record StandingChange(PersonId Person, SkillCode Skill, StandingKind From, StandingKind To)
{
    /// <summary>Whether somebody who is alone would be so no longer.</summary>
    public bool Loses => From == StandingKind.Alone && To != StandingKind.Alone;

    /// <summary>Whether somebody would come nearer to being alone: ready, or alone again.</summary>
    public bool Gains => To is StandingKind.Alone or StandingKind.Ready && From is not (StandingKind.Alone or StandingKind.Ready);

    /// <summary>Every standing that differs between the two, in the order of people and skills.</summary>
    public static Listed<StandingChange> Between(Team now, Team then) =>
        now
            .People.SelectMany(person => now.Of(person.Id))
            .Select(before => (Before: before, After: then[before.Person, before.Skill]))
            .Where(pair => pair.After is not null && pair.After.Kind != pair.Before.Kind)
            .Select(pair => new StandingChange(pair.Before.Person, pair.Before.Skill, pair.Before.Kind, pair.After!.Kind))
            .ToListed();
}
