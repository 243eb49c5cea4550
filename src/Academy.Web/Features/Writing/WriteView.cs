using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Wording;

namespace Academy.Web.Features.Writing;

/// <summary>A text that lies beside the one in the field: what somebody else saved, or what was typed before going on from that.</summary>
public sealed record OtherText(string Heading, string Words, string Text, bool IsThere);

/// <summary>The page on which a module is written.</summary>
/// <param name="Notes">What somebody should know before going on: who wrote it last, what came back and why.</param>
/// <param name="PictureLines">For each picture the line that shows it.</param>
/// <param name="Finish">What the way on is called.</param>
public sealed record WriteView(
    string Title,
    string Stand,
    IReadOnlyList<string> Notes,
    OtherText? Other,
    ShownView Shown,
    IReadOnlyList<string> PictureLines,
    string Finish,
    string Will,
    string Me
)
{
    /// <summary>How large a text may be.</summary>
    public static string Limits =>
        $"At most {ModuleFiles.LargestText / 1024} KB, no line longer than {ModuleFiles.LongestLine} characters.";

    internal static WriteView Of(DraftRead read, string title, OtherText? other, Who who, Names names, PathString mounted)
    {
        var draft = read.Draft;
        var could = Publishing.CouldReview(who.Book, who.Person.Id, who.Today).ToListed();
        return new(
            title,
            draft.Version == 0 ? "Not saved yet." : DraftWords.Stand(draft, names),
            [.. NotesOf(draft, who.Person.Id, names)],
            other,
            ShownView.Of(read, mounted),
            [.. read.Pictures.Keys.Select(file => LineOf(file))],
            could.IsEmpty ? "Finish it, and go on to publishing" : $"Finish it, and ask {DraftWords.Readers(could)} to read it",
            could.IsEmpty
                ? "Kept as a draft. Nobody studies it until you publish it."
                : "Kept as a draft. Nobody studies it until somebody else has read it.",
            who.Person.Id.Value.ToString()
        );
    }

    /// <summary>The line that shows a picture in a lesson.</summary>
    public static string LineOf(string file) => $"![What is to be seen]({file})";

    private static IEnumerable<string> NotesOf(Draft draft, PersonId me, Names names)
    {
        if (draft.Returned is { } returned)
            yield return $"{names.Of(returned.By)} gave it back: {returned.Says}";
        if (draft.AskedAt is not null)
            yield return "Somebody is asked to read it. Saving a change takes that back.";
        if (draft.Author != me && draft.Version > 0)
            yield return $"{names.Of(draft.Author)} wrote this last. If you save a change, it is yours, and somebody else reads it.";
    }
}
