using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using Academy.Web.Wording;

namespace Academy.Web.Features.Thresholds;

/// <summary>A threshold in plain words.</summary>
internal static class ThresholdWords
{
    // Somebody who needs fixing 1 groom in 3 should not come through more often than this.
    private const double TooOften = .1;
    private const int SoonGrooms = 20;

    /// <summary>Each rule in a few words.</summary>
    public static IReadOnlyList<string> Lines(Threshold threshold)
    {
        return [.. Each()];

        IEnumerable<string> Each()
        {
            if (!threshold.IsOn)
                yield return "turned off: nobody may";
            if (threshold.Row is not { } row)
                yield return "modules only";
            else
            {
                yield return $"{Counts.Of(row.MarksToFill, "mark")}, {row.MarksTaken} taken by a groom that needed fixing";
                yield return $"{Counts.Of(threshold.Breeds, "breed")}, {Counts.Of(threshold.Seniors, "senior")}";
            }
            if (threshold.OnFullCoat)
                yield return "first alone in a coat";
            yield return threshold.RecentGrooms == 0
                ? "no recency asked"
                : $"{Counts.Of(threshold.RecentGrooms, "groom")} in {threshold.RecentDays} days";
        }
    }

    /// <summary>"Wool, version 2 of its rules".</summary>
    public static string Heading(Skill skill, Threshold now) => $"{Say.Capital(skill.Name)}, version {now.Version} of its rules";

    /// <summary>What must be said of a row that lets many through; null where there is nothing to warn of.</summary>
    public static string? Warning(RowProfile row)
    {
        var soon = RowChain.ChanceFullBy(row, SoonGrooms, 1.0 / 3);
        return RowPromise.Of(row).OneInThreeThrough < TooOften
            ? null
            : $"A short row: within {SoonGrooms} rated grooms it lets somebody who needs fixing 1 in 3 through with a chance of {Counts.Chance(soon)}. It is for rare skills whose row would otherwise never fill.";
    }

    /// <summary>"Pim, wool: ready, and would be learning".</summary>
    public static string Change(StandingChange change, Names names) =>
        $"{names.Of(change.Person)}, {names.Of(change.Skill)}: {Say.Word(change.From)} now, {Say.Word(change.To)} then";
}
