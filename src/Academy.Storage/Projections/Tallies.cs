using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using Academy.Competence.Thresholds;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>
/// Keeps the newest tally of each path: moved by one step where that step comes last, folded again from the whole path where
/// something earlier changed or other rules hold.
/// </summary>
internal sealed class Tallies(AcademyDb db, SalonId salon, SalonBook book)
{
    public async Task MoveAsync(TouchedPaths touched, DateTimeOffset now)
    {
        var today = SalonDay.Of(now, book.Zone);
        foreach (var ((person, skill), path) in touched.All)
            await MoveAsync(person, skill, path, book.ThresholdOn(skill, today));
    }

    private async Task MoveAsync(PersonId person, SkillCode skill, TouchedPath touched, Threshold threshold)
    {
        var row = await db.Tallies.FindAsync(salon.Value, person.Value, skill.Value);
        var added = Tally.InOrder(touched.Added).ToList();
        if (row is not null && !touched.MustRefold && row.ThresholdVersion == threshold.Version && ComesAfter(row, added[0]))
            Write(row, added, added.Aggregate(Steps.Read(row.Tally), (tally, step) => tally.Add(step, threshold)), threshold);
        else
            await RefoldAsync(row, person, skill, threshold);
    }

    private async Task RefoldAsync(TallyRow? row, PersonId person, SkillCode skill, Threshold threshold)
    {
        var path = await PathAsync(person, skill);
        if (path.Count > 0)
            Write(row ?? Add(person, skill), path, Tally.Of(path, threshold), threshold);
        else if (row is not null)
            db.Tallies.Remove(row);
    }

    private async Task<List<Step>> PathAsync(PersonId person, SkillCode skill)
    {
        var rows = await db
            .Steps.AsNoTracking()
            .Where(row =>
                row.SalonId == salon.Value && row.Person == person.Value && row.Skill == skill.Value && row.KnownUntil == null
            )
            .ToListAsync();
        return [.. Tally.InOrder(rows.Select(row => Steps.ToStep(row).Step))];
    }

    private TallyRow Add(PersonId person, SkillCode skill) =>
        db
            .Tallies.Add(
                new TallyRow
                {
                    SalonId = salon.Value,
                    Person = person.Value,
                    Skill = skill.Value,
                }
            )
            .Entity;

    private static bool ComesAfter(TallyRow row, Step step) =>
        (step.At, step.Id, (int)step.Kind).CompareTo((row.LastAt, row.LastSource, row.LastKind)) >= 0;

    private static void Write(TallyRow row, List<Step> upTo, Tally tally, Threshold threshold)
    {
        row.ThresholdVersion = threshold.Version;
        row.Tally = Steps.Write(tally);
        (row.LastAt, row.LastSource, row.LastKind) = (upTo[^1].At, upTo[^1].Id, (int)upTo[^1].Kind);
    }
}
