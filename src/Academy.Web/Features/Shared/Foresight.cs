using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>What would change if more were said of one groom.</summary>
public static class Foresight
{
    /// <summary>Every path that would be touched, and those asked for as well, with what each would come to.</summary>
    public static async Task<IReadOnlyList<Foreseen>> ForeseeAsync(
        this RecordBook records,
        SalonId salon,
        SalonBook book,
        GroomStory before,
        GroomStory after,
        IEnumerable<PathOf> also,
        DateTimeOffset now,
        CancellationToken stop
    )
    {
        var asked = also.Concat(Foreseeing.Touched(before, after, book.Zone)).Distinct().ToList();
        var paths = await records.PathsAsync(salon, asked, now, stop);
        var today = SalonDay.Of(now, book.Zone);
        return Foreseeing.Of(after, paths, asked, skill => book.ThresholdOn(skill, today), today, book.Zone);
    }
}

/// <summary>What saving would do to one row: in words and as stitches.</summary>
/// <param name="Skill">"Wool", or "Pim, wool" where several people are concerned.</param>
/// <param name="Said">What is said of the skill: "suited"; empty where nothing is.</param>
/// <param name="Marks">"12 to 13 of 17".</param>
/// <param name="Have">Marks now.</param>
/// <param name="Of">Marks that fill the row; 0 where the skill asks for none.</param>
/// <param name="Add">Marks that it would bring.</param>
/// <param name="Take">Marks that it would take.</param>
public sealed record Effect(string Skill, string Said, string Marks, int Have, int Of, int Add, int Take)
{
    public static Effect Made(Foreseen foreseen, Names names, bool withPerson = false, string said = "") =>
        new(
            Say.Capital(
                withPerson ? $"{names.Of(foreseen.Of.Person)}, {names.Of(foreseen.Of.Skill)}" : names.Of(foreseen.Of.Skill)
            ),
            said,
            Say.Marks(foreseen),
            foreseen.Before.Row,
            foreseen.Threshold.Row?.MarksToFill ?? 0,
            Math.Max(0, foreseen.After.Row - foreseen.Before.Row),
            Math.Max(0, foreseen.Before.Row - foreseen.After.Row)
        );

    /// <summary>All of them, with the person's name where there are several people.</summary>
    public static IReadOnlyList<Effect> All(IReadOnlyList<Foreseen> foreseen, Names names)
    {
        var several = foreseen.Select(one => one.Of.Person).Distinct().Skip(1).Any();
        return [.. foreseen.Select(one => Made(one, names, several))];
    }
}
