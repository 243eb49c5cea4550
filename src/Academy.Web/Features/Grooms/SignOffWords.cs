using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>A sign-off in words: what was judged, what it counts for, and what became of it.</summary>
internal static class SignOffWords
{
    public static SignOffLine Of(SignOff signed, GroomStory story, Listed<DisputeStory> disputes, Names names) =>
        new(
            Paths.Dispute(signed.Id.Value),
            $"{names.Of(signed.Senior)} on {names.Of(signed.Subject)}, {names.Time.At(signed.SignedAt)}",
            $"{(int)signed.Level}, {Say.Word(signed.Level)}: {Say.Note(signed.Level)}",
            [
                .. signed
                    .Criteria.All.Where(one => one.Mark != Mark.Met)
                    .Select(one => $"{Say.Capital(Say.Word(one.Criterion))}: {Say.Word(one.Mark)}"),
            ],
            [.. NotesOf(signed, story, disputes, names)],
            [.. signed.Phrases.Select(QuickPhrases.Of)],
            signed.ToJunior.IsEmpty ? null : signed.ToJunior.Text,
            IsInForce: story.SignOffOf(signed.Subject)?.Id == signed.Id
        );

    private static IEnumerable<string> NotesOf(SignOff signed, GroomStory story, Listed<DisputeStory> disputes, Names names)
    {
        foreach (var verdict in signed.Counted.GroupBy(counted => counted.Verdict))
            yield return $"{Say.Capital(Say.Word(verdict.Key))}: {Counts.And([.. verdict.Select(counted => names.Of(counted.Skill))])}.";
        if (!signed.NotCounted.IsEmpty)
            yield return $"Not counted: {Counts.And([.. signed.NotCounted.Select(names.Of)])}, where {names.Of(signed.Senior)} was not alone.";
        if (signed.IsInspection)
            yield return "Inspected on the finished dog.";
        if (signed.InsteadOf is { } named)
            yield return $"{names.Of(named)} was named at first; {names.Of(signed.Senior)} really watched.";
        if (signed.IsLate)
            yield return story.Admitted.Contains(signed.Id)
                ? "Late; the owner lets it count."
                : "Late: it does not count unless the owner says so.";
        if (signed.Replaces is not null)
            yield return $"Corrects an earlier one: {signed.Why.Text}";
        if (story.SignOffOf(signed.Subject)?.Id != signed.Id)
            yield return "Replaced by a later one.";
        foreach (var dispute in disputes.Where(dispute => dispute.SignOff == signed.Id))
            yield return DisputeOf(dispute, names);
    }

    private static string DisputeOf(DisputeStory dispute, Names names) =>
        (
            dispute.Answer switch
            {
                null => "No answer yet.",
                { IsOverturned: true } answer => $"The owner took it back: {answer.Says.Text}",
                { OwnerWasJudge: true } answer => $"The owner, who had judged, keeps it: {answer.Says.Text}",
                var answer => $"The owner keeps it: {answer.Says.Text}",
            }
        )
            is var answered
            ? $"Disputed by {names.Of(dispute.By)} {names.Time.At(dispute.At)}: “{dispute.Says.Text}” {answered}"
            : "";
}
