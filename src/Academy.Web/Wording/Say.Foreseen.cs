using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;

namespace Academy.Web.Wording;

// What saving will do, before it is saved.
public static partial class Say
{
    /// <summary>"12 to 13 of 17", "stays at 12 of 17"; where the skill asks for no row that it does not.</summary>
    public static string Marks(Foreseen foreseen) =>
        foreseen switch
        {
            { Threshold.Row: null } => "asks for no row",
            { Threshold.Row: { } row } when foreseen.Before.Row == foreseen.After.Row =>
                $"stays at {Counts.OutOf(foreseen.After.Row, row.MarksToFill)}",
            { Threshold.Row: { } row } => $"{foreseen.Before.Row} to {Counts.OutOf(foreseen.After.Row, row.MarksToFill)}",
        };

    /// <summary>"wool 12 to 13 of 17".</summary>
    public static string MarksIn(Foreseen foreseen, Names names) => $"{names.Of(foreseen.Of.Skill)} {Marks(foreseen)}";

    /// <summary>What would follow beyond the marks, each a sentence; none where nothing else changes.</summary>
    public static IReadOnlyList<string> Follows(IEnumerable<Foreseen> foreseen, Names names) =>
        [.. foreseen.SelectMany(one => Follows(one, names)).Distinct(StringComparer.Ordinal)];

    /// <summary>What reporting this would stop, at once and without waiting for the review.</summary>
    public static IReadOnlyList<string> Stops(
        bool isCritical,
        Severity severity,
        IReadOnlyList<Foreseen> foreseen,
        Names names
    ) =>
        (isCritical, severity) switch
        {
            (true, _) =>
            [
                "This is on the salon's list of critical incidents. It does not wait for the review.",
                .. StoppedOf(foreseen, names),
            ],
            (_, Severity.NearMiss) =>
            [
                "A near miss harmed nobody: it lowers no row and stops no clearance, for anybody. Writing it down helps the next dog.",
            ],
            _ => ["This is not on the salon's list of critical incidents: it stops nothing. The owner reads it."],
        };

    /// <summary>"Stops at once: wool and nails"; a long list is counted instead.</summary>
    public static string StopsAtOnce(IReadOnlyList<Foreseen> stopped, Names names) =>
        stopped.Count > MostNamed
            ? $"Stops at once: {Counts.Of(stopped.Count, "skill")}"
            : $"Stops at once: {Counts.And([.. stopped.Select(one => names.Of(one.Of.Skill))])}";

    private const int MostNamed = 3;

    /// <summary>Why a whole groom does not count as suitable, each a few words; none where it does.</summary>
    public static IReadOnlyList<string> Because(SupportLevel level, Criteria criteria)
    {
        return [.. Each()];

        IEnumerable<string> Each()
        {
            if (level < SupportLevel.StoodBy)
                yield return $"Support level {(int)level}, {Small(Word(level))}: the senior was needed.";
            foreach (var (criterion, mark) in criteria.All)
                if (mark == Mark.NotYet)
                    yield return $"{Capital(Word(criterion))}: not yet.";
                else if (mark == Mark.NotSeen && criterion is Criterion.SkinSafety or Criterion.Comfort)
                    yield return $"{Capital(Word(criterion))}: not seen, and it must be seen and met.";
        }
    }

    /// <summary>"Suited", "Needed fixing", "Critical incident", as the head of what will be kept.</summary>
    public static string Headline(Verdict verdict) => Capital(Word(verdict));

    /// <summary>What a review would come to for whoever was responsible, in a sentence that stands above the rows.</summary>
    public static string Finding(PersonId? responsible, bool isTechnique, bool isCritical, Names names) =>
        (responsible, isTechnique, isCritical) switch
        {
            (_, _, false) => "It was not critical: the review is kept, and no row and no clearance changes.",
            (null, _, _) => "Nobody was responsible: the incident stays on the record, counts for nobody, and its stops end.",
            ({ } person, true, _) =>
                $"Technique contributed: {names.Of(person)} walks the whole row of these skills again from no marks, and you sign anew.",
            ({ } person, false, _) =>
                $"Technique did not contribute: it counts as one groom of {names.Of(person)} that needed fixing. The stop stays until you or a deputy lift it.",
        };

    private static IEnumerable<string> StoppedOf(IReadOnlyList<Foreseen> foreseen, Names names)
    {
        var people = foreseen.GroupBy(one => one.Of.Person).ToList();
        foreach (var hers in people)
        {
            var stopped = hers.Where(one => one.WouldStop).Select(one => names.Of(one.Of.Skill)).ToList();
            yield return stopped.Count > 0
                ? $"{names.Of(hers.Key)} is stood down at once: {Counts.And(stopped)}."
                : $"{names.Of(hers.Key)} has no clearance here that could stop; all marks of these rows go.";
        }
    }

    private static IEnumerable<string> Follows(Foreseen one, Names names)
    {
        var skill = Skill(one.Of.Skill, names);
        var person = names.Of(one.Of.Person);
        if (one.WouldStop)
            yield return $"{skill}: {person} is stood down at once.";
        if (one.WouldGoOn)
            yield return $"{skill}: {person} is no longer stood down.";
        if (one.WouldFill)
            yield return $"{skill}: this fills the row of {person}.";
        if (one.WouldCheckAgain)
            yield return $"{skill}: the drift count asks for a check; {person} grooms with a senior until the row is full again.";
        if (one.WouldWatch)
            yield return $"{skill}: {NextOnes(one.After.WatchedYet)} of {person}.";
        if (one.WouldReturn)
            yield return $"{skill}: the clearance of {person} is back with this.";
    }
}
