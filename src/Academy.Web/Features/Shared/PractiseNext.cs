using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>What a senior found of one groom and what to practise next, as whoever was judged reads it.</summary>
/// <param name="Title">"Biscuit, suited".</param>
/// <param name="Signed">"Rosa, 2 hours ago".</param>
/// <param name="Practise">Phrases that were tapped.</param>
/// <param name="Says">What was written; empty where nothing was.</param>
/// <param name="Notes">Late, overturned: what it does not count for.</param>
/// <param name="Href">The sign-off's own page, where it may be disputed.</param>
public sealed record PractiseNext(
    string Title,
    string Signed,
    IReadOnlyList<string> Practise,
    string Says,
    IReadOnlyList<string> Notes,
    string Href
)
{
    public static PractiseNext Of(SignOff signed, GroomStory story, string dog, Names names)
    {
        var view = SignedView.Of(signed, story, names);
        var verdict = SigningOff.VerdictOf(signed.Level, signed.Criteria, signed.NotSuitable, story.Groom.Coat, isCoat: true);
        return new(
            $"{dog}, {Say.Word(verdict)}",
            $"{names.Of(signed.Senior)}, {names.Time.Ago(signed.SignedAt)}",
            [.. view.Because, .. view.Practise],
            view.Says,
            view.Notes,
            view.Href
        );
    }
}
