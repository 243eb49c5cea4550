using Academy.Competence.Quizzes;
using Academy.Competence.Salons;

namespace Academy.Competence.Skills;

/// <summary>A module whose author names a skill that does not ask for it.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="Module">The module.</param>
/// <param name="IsAmongFirst">Whether the skill would ask for no more than <see cref="Suggesting.MostForOne"/> with it.</param>
public sealed record Suggestion(SkillCode Skill, ModuleName Module, bool IsAmongFirst);

/// <summary>What the skills of a salon could ask for besides what they do. The owner says whether they do.</summary>
public static class Suggesting
{
    /// <summary>
    /// How many modules one skill is suggested to ask for, so that a starter is not kept from it by reading (the salon's own
    /// rule, no published source).
    /// </summary>
    public const int MostForOne = 4;

    /// <summary>The suggestions for every skill that is not retired, in the salon's order and that of the library.</summary>
    public static Listed<Suggestion> For(SalonBook book, IReadOnlyCollection<Module> library) =>
        book.Skills.Where(skill => !skill.IsRetired).SelectMany(skill => For(skill, library)).ToListed();

    private static IEnumerable<Suggestion> For(Skill skill, IEnumerable<Module> library) =>
        library
            .Where(module => module.Opens.Contains(skill.Code) && !skill.Modules.Contains(module.Name))
            .Select((module, at) => new Suggestion(skill.Code, module.Name, skill.Modules.Count + at < MostForOne));
}
