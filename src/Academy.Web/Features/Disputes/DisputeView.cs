using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Disputes;

/// <summary>What somebody says about a sign-off.</summary>
public sealed class DisputeForm
{
    private const int MostLetters = 4000;

    public Guid Operation { get; set; }

    public long Version { get; set; }

    public string? Says { get; set; }

    /// <summary>The owner's answer: taken back or not.</summary>
    public string? Overturn { get; set; }

    public Words Words => new(Says?.Trim() ?? "");

    public IEnumerable<(string Field, string Words)> Wrong(bool asksForAnswer)
    {
        if (Says?.Length > MostLetters)
            yield return ("Form.Says", $"Write at most {MostLetters} letters here.");
        if (asksForAnswer && string.IsNullOrEmpty(Overturn))
            yield return ("Form.Overturn", "Choose whether the sign-off stands.");
    }
}

/// <summary>Something said for or against, with its moment.</summary>
public sealed record Saying(string When, string Who, string Words);

/// <summary>What the owner would change, in words and rows.</summary>
public sealed record Change(IReadOnlyList<string> Follows, IReadOnlyList<Effect> Rows)
{
    public static Change Of(IReadOnlyList<Foreseen> foreseen, Names names) =>
        new(Say.Follows(foreseen, names), Effect.All(foreseen, names));
}

/// <summary>One sign-off, what was said against it, and what may be said now.</summary>
public sealed record DisputeView(
    string Heading,
    string Title,
    string Groomed,
    string GroomHref,
    string? CorrectHref,
    SignedView Signed,
    IReadOnlyList<Saying> Sayings,
    string? NewerHref,
    Ask Ask,
    string? JudgeNote,
    IReadOnlyList<Pick> Answers,
    Change IfDone
)
{
    private static readonly IReadOnlyList<Pick> AnswerPicks =
    [
        new(bool.FalseString, "The sign-off stands"),
        new(bool.TrueString, "I take it back", "it stays visible and no longer counts"),
    ];

    public static DisputeView Of(DisputedSignOff found, Person viewer, Change ifDone)
    {
        var (one, signed) = found;
        return new(
            HeadingOf(found),
            one.Title,
            one.Groomed,
            Paths.Groom(one.Groom.Id.Value),
            viewer.MayJudgeByRole && found.IsInForce ? Paths.SignOff(one.Groom.Id.Value, signed.Subject.Value) : null,
            SignedView.Of(signed, one.Story, one.Names),
            [.. SayingsOf(found.Dispute, one.Names)],
            found.IsInForce ? null : Paths.Dispute(one.Story.SignOffOf(signed.Subject)!.Id.Value),
            found.AskOf(viewer),
            signed.Senior == viewer.Id && viewer.Role == Role.Owner
                ? "You judged this groom yourself. You may answer all the same; the record says that the owner was the judge."
                : null,
            AnswerPicks,
            ifDone
        );
    }

    public static string MovedOn =>
        "Meanwhile something more was said of this groom: it stands below. What you typed is kept; look again, then save.";

    private static string HeadingOf(DisputedSignOff found) =>
        found.Dispute switch
        {
            { Answer: null } => "Disputed, waits for the owner's answer",
            { Answer.IsOverturned: true } => "Disputed, and taken back",
            { Answer: not null } => "Disputed, and it stands",
            null when found.Signed.IsLate && !found.IsAdmitted => "Signed late, does not count",
            null => "Signed off",
        };

    private static IEnumerable<Saying> SayingsOf(DisputeStory? dispute, Names names)
    {
        if (dispute is null)
            yield break;
        yield return new(names.Time.At(dispute.At), $"{names.Of(dispute.By)} disputes the sign-off", dispute.Says.Text ?? "");
        if (dispute.Answer is { } answer)
            yield return new("", AnsweredBy(answer), answer.Says.Text ?? "");
    }

    private static string AnsweredBy(DisputeAnswered answer) =>
        (answer.IsOverturned ? "The owner takes it back" : "The owner lets it stand")
        + (answer.OwnerWasJudge ? ". The owner was the judge" : "");
}
