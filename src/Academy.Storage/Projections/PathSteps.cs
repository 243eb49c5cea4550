using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>
/// Keeps the steps of everybody's paths. A step that no longer holds is not removed: its row says until when it was known so,
/// and a past moment can be asked what was known then.
/// </summary>
internal sealed class PathSteps(AcademyDb db, SalonId salon, TouchedPaths touched)
{
    private readonly Dictionary<Guid, GroomFile> _grooms = [];

    public async Task ProjectAsync(Recorded told, SalonBook book, bool isNew)
    {
        if (told.Fact is ThresholdSet set)
            await TouchAllOfAsync(set.Threshold.Skill, told.RecordedAt);
        else if (FactForms.Of(told.Fact) is { IsOfAGroom: true } form)
            await ProjectGroomAsync(form.SubjectOf(told.Fact)!.Value, told, book.Zone, isNew);
        else
            Put(Paths.Of(told.Fact, book.Zone), told, _ => { });
    }

    private async Task TouchAllOfAsync(SkillCode skill, DateTimeOffset now)
    {
        var people = await db
            .Tallies.Where(row => row.SalonId == salon.Value && row.Skill == skill.Value)
            .Select(row => row.Person)
            .ToListAsync();
        foreach (var person in people.Select(id => new PersonId(id)).Union(touched.PeopleIn(skill)).ToList())
            touched.Of(person, skill, now).Refold();
    }

    private async Task ProjectGroomAsync(Guid groom, Recorded told, TimeZoneInfo zone, bool isNew)
    {
        var file = await FileOfAsync(groom, told, isNew);
        file.Facts.Add(told);
        if (GroomStories.Of(file.Facts) is not { } story)
            return;

        var left = Paths.Of(story, zone).ToList();
        foreach (var row in file.Steps.Where(row => !left.Remove(Steps.ToStep(row))).ToList())
            TakeOff(row, told, file);
        Put(left, told, file.Steps.Add);
    }

    private async Task<GroomFile> FileOfAsync(Guid groom, Recorded told, bool isNew)
    {
        if (_grooms.TryGetValue(groom, out var known))
            return known;
        var file = isNew ? new GroomFile([], []) : await ReadFileAsync(groom, told);
        _grooms.Add(groom, file);
        return file;
    }

    private async Task<GroomFile> ReadFileAsync(Guid groom, Recorded told)
    {
        var facts = await db
            .Ledger.Where(row => row.SalonId == salon.Value && row.Subject == groom && row.Seq < told.Seq)
            .ReadAsync(db, CancellationToken.None);
        return new GroomFile([.. facts], await StepsOfAsync(groom, facts));
    }

    private async Task<List<StepRow>> StepsOfAsync(Guid groom, IEnumerable<Recorded> facts)
    {
        Guid[] sources =
        [
            groom,
            .. facts.Select(told => told.Fact).OfType<IncidentReported>().Select(fact => fact.Incident.Id.Value),
        ];
        return await db
            .Steps.Where(row => row.SalonId == salon.Value && sources.Contains(row.Source) && row.KnownUntil == null)
            .ToListAsync();
    }

    private void TakeOff(StepRow row, Recorded told, GroomFile file)
    {
        row.KnownUntil = told.RecordedAt;
        file.Steps.Remove(row);
        var of = Steps.ToStep(row);
        touched.Of(of.Person, of.Skill, told.RecordedAt).Lose(of.Step);
    }

    private void Put(IReadOnlyCollection<StepOf> steps, Recorded told, Action<StepRow> remember)
    {
        var fact = FactIds.Of(salon, told.Seq);
        foreach (var (number, step) in steps.Index())
        {
            var row = Steps.ToRow(salon.Value, step, FactIds.Row(fact, number), told.RecordedAt);
            db.Steps.Add(row);
            remember(row);
            touched.Of(step.Person, step.Skill, told.RecordedAt).Add(step.Step);
        }
    }

    private sealed record GroomFile(List<Recorded> Facts, List<StepRow> Steps);
}
