using System.Text.Json;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Statistics;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;

namespace Academy.Storage;

/// <summary>Steps between record and row.</summary>
internal static class Steps
{
    public static StepRow ToRow(Guid salon, StepOf of, Guid row, DateTimeOffset knownFrom) =>
        new()
        {
            SalonId = salon,
            Person = of.Person.Value,
            Skill = of.Skill.Value,
            At = of.Step.At,
            Source = of.Step.Id,
            Kind = (int)of.Step.Kind,
            Row = row,
            Day = of.Step.Day,
            Verdict = (int?)of.Step.Verdict,
            Breed = of.Step.Breed,
            Senior = of.Step.Senior?.Value,
            Limits = of.Step.Limits is null ? null : JsonSerializer.Serialize(of.Step.Limits, FactJson.Options),
            IsException = of.Step.IsException,
            ThresholdVersion = of.Step.ThresholdVersion,
            IsReviewOpen = of.Step.IsReviewOpen,
            IsTechnique = of.Step.IsTechnique,
            KnownFrom = knownFrom,
        };

    public static StepOf ToStep(StepRow row) =>
        new(
            new PersonId(row.Person),
            new SkillCode(row.Skill),
            new Step(row.At, row.Source, (StepKind)row.Kind, row.Day)
            {
                Verdict = (Verdict?)row.Verdict,
                Breed = row.Breed,
                Senior = row.Senior is { } senior ? new PersonId(senior) : null,
                Limits = row.Limits is null ? null : JsonSerializer.Deserialize<Limits>(row.Limits, FactJson.Options),
                IsException = row.IsException,
                ThresholdVersion = row.ThresholdVersion,
                IsReviewOpen = row.IsReviewOpen,
                IsTechnique = row.IsTechnique,
            }
        );
}
