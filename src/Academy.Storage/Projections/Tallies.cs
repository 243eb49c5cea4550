using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using Academy.Competence.Thresholds;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>
/// Keeps the newest tally of each path: moved on where a step comes last, folded again from a resting point some steps back
/// where something recent changed (every sign-off does that), and from the beginning where something old did or other rules hold.
/// </summary>
internal sealed class Tallies(AcademyDb db, SalonId salon, SalonBook book)
{
    /// <summary>When so many steps lie behind the resting point, it moves up, and leaves the fewer behind it.</summary>
    private const int MostSinceRest = 256;

    private const int LeftSinceRest = 128;

    /// <summary>Moves every touched path, each under the rules of the day on which it was touched last.</summary>
    public async Task MoveAsync(TouchedPaths touched)
    {
        foreach (var ((person, skill), path) in touched.All)
            await MoveAsync(await RowAsync(person, skill), path, book.ThresholdOn(skill, SalonDay.Of(path.TouchedAt, book.Zone)));
    }

    private async Task<TallyRow> RowAsync(PersonId person, SkillCode skill) =>
        await db.Tallies.FindAsync(salon.Value, person.Value, skill.Value)
        ?? db.Tallies.Add(
            new TallyRow
            {
                SalonId = salon.Value,
                Person = person.Value,
                Skill = skill.Value,
            }
        ).Entity;

    private Task MoveAsync(TallyRow row, TouchedPath touched, Threshold threshold)
    {
        var mayGoOn = TallyForm.IsNewest(row.Tally) && !touched.MustRefold && row.ThresholdVersion == threshold.Version;
        row.ThresholdVersion = threshold.Version;
        if (!mayGoOn || touched.Earliest is not { } earliest)
            return RefoldAsync(row, rest: null, Tally.Empty, threshold);
        if (!touched.HasLost && row.StepsSince < MostSinceRest && !earliest.IsBefore(LastOf(row)))
            return GoOn(row, [.. touched.Added], threshold);
        return RestOf(row) is { } rest && earliest.IsAfter(rest)
            ? RefoldAsync(row, rest, TallyForm.Read(row.RestTally), threshold)
            : RefoldAsync(row, rest: null, Tally.Empty, threshold);
    }

    private static Task GoOn(TallyRow row, List<Step> added, Threshold threshold)
    {
        row.StepsSince += added.Count;
        Write(row, added[^1], Fold(TallyForm.Read(row.Tally), added, threshold));
        return Task.CompletedTask;
    }

    private async Task RefoldAsync(TallyRow row, PathPlace? rest, Tally from, Threshold threshold)
    {
        var path = await PathAsync(row, rest);
        var passed = PassedBy(path);
        if (passed > 0)
            from = Rest(row, path[passed - 1], Fold(from, path.Take(passed), threshold));
        else if (rest is null)
            (row.RestAt, row.RestSource, row.RestKind, row.RestTally) = (null, null, null, null);
        row.StepsSince = path.Count - passed;
        if (path.Count > 0)
            Write(row, path[^1], Fold(from, path.Skip(passed), threshold));
        else if (rest is not null)
            Write(row, rest, from);
        else
            db.Tallies.Remove(row);
    }

    // Several steps of one declaration share a place: the resting point never comes between them.
    private static int PassedBy(List<Step> path)
    {
        var passed = path.Count > MostSinceRest ? path.Count - LeftSinceRest : 0;
        while (passed > 0 && PathPlace.Of(path[passed - 1]) == PathPlace.Of(path[passed]))
            passed--;
        return passed;
    }

    private async Task<List<Step>> PathAsync(TallyRow of, PathPlace? after)
    {
        var from = after?.At ?? DateTimeOffset.MinValue;
        var rows = await db
            .Steps.AsNoTracking()
            .Where(row =>
                row.SalonId == salon.Value
                && row.Person == of.Person
                && row.Skill == of.Skill
                && row.At >= from
                && row.KnownUntil == null
            )
            .ToListAsync();
        var steps = Tally.InOrder(rows.Select(row => Steps.ToStep(row).Step));
        return [.. after is null ? steps : steps.Where(step => PathPlace.Of(step).IsAfter(after))];
    }

    private static Tally Fold(Tally from, IEnumerable<Step> steps, Threshold threshold) =>
        steps.Aggregate(from, (tally, step) => tally.Add(step, threshold));

    internal static PathPlace LastOf(TallyRow row) => new(row.LastAt, row.LastSource, row.LastKind);

    internal static PathPlace? RestOf(TallyRow row) =>
        row is { RestAt: { } at, RestSource: { } source, RestKind: { } kind } ? new PathPlace(at, source, kind) : null;

    private static Tally Rest(TallyRow row, Step at, Tally tally)
    {
        (row.RestAt, row.RestSource, row.RestKind) = (at.At, at.Id, (int)at.Kind);
        row.RestTally = TallyForm.Write(tally);
        return tally;
    }

    private static void Write(TallyRow row, Step last, Tally tally) => Write(row, PathPlace.Of(last), tally);

    private static void Write(TallyRow row, PathPlace last, Tally tally)
    {
        (row.LastAt, row.LastSource, row.LastKind) = (last.At, last.Source, last.Kind);
        row.Tally = TallyForm.Write(tally);
    }
}
