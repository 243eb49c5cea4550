using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Features.Decisions;

/// <summary>Which grooms were done alone by somebody who was not alone in the coat on that day.</summary>
internal static class DoneAlone
{
    /// <summary>The paths that must be read to tell: of those who are not alone now, or became so after a groom.</summary>
    public static IReadOnlyCollection<PathOf> ToRead(IEnumerable<SoloGroom> grooms, Team team, SalonTime time) =>
        [.. grooms.Where(groom => !IsPlain(groom, team, time)).Select(PathIn).Distinct()];

    /// <summary>Those grooms, by what each path had come to before them.</summary>
    public static IReadOnlyList<SoloGroom> Without(
        IEnumerable<SoloGroom> grooms,
        ILookup<PathOf, Step> paths,
        Team team,
        SalonBook book,
        SalonTime time
    ) => [.. grooms.Where(groom => !IsPlain(groom, team, time) && !HeldThen(groom, paths, book, time))];

    private static PathOf PathIn(SoloGroom groom) => new(new PersonId(groom.By), new SkillCode(groom.Coat));

    private static bool IsPlain(SoloGroom groom, Team team, SalonTime time) =>
        team[PathIn(groom).Person, PathIn(groom).Skill] is { Kind: StandingKind.Alone } standing
        && standing.Since < time.DayOf(groom.EndedAt);

    private static bool HeldThen(SoloGroom groom, ILookup<PathOf, Step> paths, SalonBook book, SalonTime time)
    {
        var day = time.DayOf(groom.EndedAt);
        var threshold = book.ThresholdOn(new SkillCode(groom.Coat), day);
        return Tally.Of(paths[PathIn(groom)].Where(step => step.At < groom.EndedAt), threshold).HoldsOn(day, threshold);
    }
}
