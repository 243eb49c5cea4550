using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Competence.Thresholds;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>
/// Folds every path again from the facts of the ledger, and compares it with the steps and the tally that are kept. What
/// standings are read from is a cache and nothing more; this is the proof of it.
/// </summary>
public sealed class StandingsCheck(AcademyDb db)
{
    private const int GroomsAtOnce = 200;

    private static readonly string Logged = FactForms.CodeOf<GroomLogged>();

    private static readonly string[] Decisions =
    [
        FactForms.CodeOf<ExperienceDeclared>(),
        FactForms.CodeOf<WorkElsewhere>(),
        FactForms.CodeOf<ClearanceGiven>(),
        FactForms.CodeOf<StoodDown>(),
        FactForms.CodeOf<StandDownLifted>(),
    ];

    public async Task<IReadOnlyList<StandingsChecked>> CheckAllAsync(CancellationToken stop)
    {
        var found = new List<StandingsChecked>();
        foreach (var salon in await db.Salons.Select(row => row.Id).ToArrayAsync(stop))
            found.Add(await CheckAsync(new SalonId(salon), stop));
        return found;
    }

    public async Task<StandingsChecked> CheckAsync(SalonId salon, CancellationToken stop)
    {
        var book = await new RecordBook(db, new BookShelf()).SalonAsync(salon, stop);
        var told = (await FromLedgerAsync(salon, book.Zone, stop)).ToLookup(of => (of.Person, of.Skill), of => of.Step);
        var kept = (await KeptAsync(salon, stop)).ToLookup(of => (of.Person, of.Skill), of => of.Step);
        var tallies = await TalliesAsync(salon, stop);

        var paths = told.Select(path => path.Key).Union(kept.Select(path => path.Key)).Union(tallies.Keys).ToList();
        var first = paths.Select(path => FaultOf(path, [.. told[path]], [.. kept[path]], tallies.GetValueOrDefault(path), book));
        return new StandingsChecked(
            salon.Value,
            paths.Count,
            told.Sum(path => (long)path.Count()),
            first.FirstOrDefault(fault => fault is not null)
        );
    }

    private async Task<List<StepOf>> FromLedgerAsync(SalonId salon, TimeZoneInfo zone, CancellationToken stop)
    {
        var decided = await Entries(salon).Where(row => Decisions.Contains(row.Kind)).ReadAsync(db, stop);
        var steps = decided.SelectMany(told => Paths.Of(told.Fact, zone)).ToList();
        var grooms = await Entries(salon)
            .Where(row => row.Kind == Logged)
            .Select(row => row.Subject)
            .Distinct()
            .ToListAsync(stop);
        foreach (var some in grooms.Chunk(GroomsAtOnce))
            steps.AddRange(await OfGroomsAsync(salon, some, zone, stop));
        return steps;
    }

    private async Task<IEnumerable<StepOf>> OfGroomsAsync(
        SalonId salon,
        Guid?[] grooms,
        TimeZoneInfo zone,
        CancellationToken stop
    )
    {
        var facts = await Entries(salon).Where(row => grooms.Contains(row.Subject)).ReadAsync(db, stop);
        return facts
            .GroupBy(told => FactForms.Of(told.Fact).SubjectOf(told.Fact))
            .Select(GroomStories.Of)
            .OfType<GroomStory>()
            .SelectMany(story => Paths.Of(story, zone));
    }

    private IQueryable<LedgerRow> Entries(SalonId salon) => db.Ledger.AsNoTracking().Where(row => row.SalonId == salon.Value);

    private async Task<IEnumerable<StepOf>> KeptAsync(SalonId salon, CancellationToken stop)
    {
        var rows = await db
            .Steps.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.KnownUntil == null)
            .ToListAsync(stop);
        return rows.Select(Steps.ToStep);
    }

    private async Task<Dictionary<(PersonId, SkillCode), TallyRow>> TalliesAsync(SalonId salon, CancellationToken stop)
    {
        var rows = await db.Tallies.AsNoTracking().Where(row => row.SalonId == salon.Value).ToListAsync(stop);
        return rows.ToDictionary(row => (new PersonId(row.Person), new SkillCode(row.Skill)));
    }

    private static StandingFault? FaultOf(
        (PersonId Person, SkillCode Skill) path,
        Step[] told,
        Step[] kept,
        TallyRow? row,
        SalonBook book
    )
    {
        var inOrder = Tally.InOrder(told).ToList();
        if (!inOrder.SequenceEqual(Tally.InOrder(kept)))
            return new StandingFault(path.Person, path.Skill, StandingFaultKind.StepsDiffer);
        if (row is null)
            return new StandingFault(path.Person, path.Skill, StandingFaultKind.TallyMissing);
        return inOrder.Count > 0 && IsTallyOf(row, inOrder, ThresholdOf(row, book))
            ? null
            : new StandingFault(path.Person, path.Skill, StandingFaultKind.TallyDiffers);
    }

    private static bool IsTallyOf(TallyRow row, List<Step> path, Threshold? threshold) =>
        threshold is not null
        && row.Tally.AsSpan().SequenceEqual(TallyForm.Write(Tally.Of(path, threshold)))
        && Tallies.LastOf(row) == PathPlace.Of(path[^1])
        && IsRestOf(row, path, threshold);

    private static bool IsRestOf(TallyRow row, List<Step> path, Threshold threshold)
    {
        var rest = Tallies.RestOf(row);
        var passed = path.TakeWhile(step => rest is not null && !PathPlace.Of(step).IsAfter(rest)).ToList();
        return row.StepsSince == path.Count - passed.Count
            && (rest is null || row.RestTally.AsSpan().SequenceEqual(TallyForm.Write(Tally.Of(passed, threshold))));
    }

    // A skill of the salon's own that was given no threshold is asked by the first version of the default.
    private static Threshold? ThresholdOf(TallyRow row, SalonBook book) =>
        book.Thresholds.FirstOrDefault(set => set.Skill.Value == row.Skill && set.Version == row.ThresholdVersion)
        ?? (row.ThresholdVersion == 1 ? DefaultThresholds.For(new SkillCode(row.Skill), DateOnly.MinValue) : null);
}

public enum StandingFaultKind
{
    /// <summary>The steps kept are not the steps that the facts give.</summary>
    StepsDiffer,

    /// <summary>There is a path and no tally of it.</summary>
    TallyMissing,

    /// <summary>The tally kept is not what the path comes to.</summary>
    TallyDiffers,
}

/// <summary>The first path whose cache does not say what its facts say.</summary>
public sealed record StandingFault(PersonId Person, SkillCode Skill, StandingFaultKind Kind);

/// <summary>What came of folding every path of one salon again.</summary>
public sealed record StandingsChecked(Guid Salon, int Paths, long Steps, StandingFault? First)
{
    public bool Holds => First is null;
}
