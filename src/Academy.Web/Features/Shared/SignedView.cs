using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>A sign-off as it stands on the record.</summary>
/// <param name="Id">Which.</param>
/// <param name="Heading">"Suited, signed by Rosa".</param>
/// <param name="Signed">When, and instead of whom.</param>
/// <param name="Level">Support level in words.</param>
/// <param name="Because">Why it did not suit; none where it did.</param>
/// <param name="Counted">Skills it counts for, with what it says of each.</param>
/// <param name="NotCounted">Skills it does not count for.</param>
/// <param name="Notes">Late, overturned, corrected, and why: each a sentence.</param>
/// <param name="Practise">What to practise next, tapped.</param>
/// <param name="Says">What to practise next, written.</param>
/// <param name="Suited">Whether the whole groom suited.</param>
/// <param name="Counts">Whether it counts: in force, on time or let count, not taken back.</param>
/// <param name="InForce">Whether it is the newest one of this part.</param>
/// <param name="Href">Its own page.</param>
public sealed record SignedView(
    Guid Id,
    string Heading,
    string Signed,
    string Level,
    IReadOnlyList<string> Because,
    IReadOnlyList<string> Counted,
    IReadOnlyList<string> NotCounted,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Practise,
    string Says,
    bool Suited,
    bool Counts,
    bool InForce,
    string Href
)
{
    public static SignedView Of(SignOff signed, GroomStory story, Names names)
    {
        var verdict = SigningOff.VerdictOf(signed.Level, signed.Criteria, signed.NotSuitable, story.Groom.Coat, isCoat: true);
        return new(
            signed.Id.Value,
            $"{Say.Headline(verdict)}, {(signed.IsInspection ? "inspected" : "signed")} by {names.Of(signed.Senior)}",
            $"{Say.Capital(names.Time.At(signed.SignedAt))}, for {names.Of(signed.Subject)}",
            $"{(int)signed.Level}, {Say.Word(signed.Level)}",
            Say.Because(signed.Level, signed.Criteria),
            [.. signed.Counted.Select(one => $"{names.Of(one.Skill)}: {Say.Word(one.Verdict)}")],
            [.. signed.NotCounted.Select(names.Of)],
            [.. NotesOn(signed, story, names)],
            [.. signed.Phrases.Select(QuickPhrases.Of)],
            signed.ToJunior.Text ?? "",
            verdict == Verdict.Suitable,
            story.Counts(signed),
            story.SignOffOf(signed.Subject)?.Id == signed.Id,
            Paths.Dispute(signed.Id.Value)
        );
    }

    /// <summary>All sign-offs of one groom, newest first; replaced ones stay visible.</summary>
    public static IReadOnlyList<SignedView> All(GroomStory story, Names names) =>
        [.. story.SignOffs.Reverse().Select(signed => Of(signed, story, names))];

    private static IEnumerable<string> NotesOn(SignOff signed, GroomStory story, Names names)
    {
        if (signed.InsteadOf is { } named)
            yield return $"{names.Of(named)} was named as watching; {names.Of(signed.Senior)} really watched.";
        if (signed.Replaces is not null)
            yield return $"It corrects an earlier sign-off: {signed.Why.Text}";
        if (story.SignOffOf(signed.Subject) is { } inForce && inForce.Id != signed.Id)
            yield return $"Corrected by {names.Of(inForce.Senior)} at {names.Time.At(inForce.SignedAt)}: it no longer counts.";
        if (signed.IsLate)
            yield return story.Admitted.Contains(signed.Id)
                ? "It was late; the owner let it count."
                : "It was late: it does not count unless the owner says so.";
        if (story.Overturned.Contains(signed.Id))
            yield return "The owner took it back after a dispute: it does not count.";
    }
}
