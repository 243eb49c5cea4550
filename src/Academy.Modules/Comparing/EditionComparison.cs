using Academy.Competence;
using Academy.Modules.Parcels;

namespace Academy.Modules.Comparing;

/// <summary>What happened to a piece of a module between two texts of it.</summary>
public enum Change
{
    /// <summary>It stands in both.</summary>
    Same,

    /// <summary>Only the later text has it.</summary>
    Added,

    /// <summary>Only the earlier text has it.</summary>
    Removed,

    /// <summary>Both have it, in other words.</summary>
    Changed,
}

/// <summary>Words of a line.</summary>
/// <param name="Words">The words, as they were typed.</param>
/// <param name="IsChanged">Whether they are what makes the two lines differ.</param>
public sealed record Piece(string Words, bool IsChanged);

/// <summary>One line of both texts.</summary>
/// <param name="Change">What happened to it.</param>
/// <param name="Before">The earlier words; empty for a line that was added.</param>
/// <param name="After">The later words; empty for a line that was removed.</param>
public sealed record ComparedLine(Change Change, Listed<Piece> Before, Listed<Piece> After);

/// <summary>One question of both texts, found by its short name.</summary>
public sealed record ComparedQuestion(string Id, Change Change, Listed<ComparedLine> Lines);

/// <summary>One picture of both.</summary>
public sealed record ComparedPicture(string File, Change Change);

/// <summary>Two texts of one module side by side: an edition and the one before it, a draft and the edition in force.</summary>
/// <param name="About">The front matter, key by key.</param>
/// <param name="Lesson">The lesson, paragraph by paragraph.</param>
/// <param name="Questions">The questions in the order of the later text, those that are gone after them.</param>
/// <param name="Pictures">The pictures by file name.</param>
/// <remarks>
/// It compares texts and not pages, so that a draft that cannot be read yet is compared as well. Whether a line was broken here or
/// there is no change.
/// </remarks>
public sealed record EditionComparison(
    Listed<ComparedLine> About,
    Listed<ComparedLine> Lesson,
    Listed<ComparedQuestion> Questions,
    Listed<ComparedPicture> Pictures
)
{
    /// <summary>Whether nothing differs.</summary>
    public bool IsSame =>
        About.Concat(Lesson).All(line => line.Change == Change.Same)
        && Questions.All(question => question.Change == Change.Same)
        && Pictures.All(picture => picture.Change == Change.Same);

    /// <summary>Compares two texts of a module.</summary>
    public static EditionComparison Of(ModuleFiles before, ModuleFiles after)
    {
        var (earlier, later) = (CutText.Of(before.Text), CutText.Of(after.Text));
        return new(
            Lines.Compared(earlier.About, later.About),
            Lines.Compared(earlier.Lesson, later.Lesson),
            [.. QuestionsOf(earlier, later)],
            [.. PicturesOf(before, after)]
        );
    }

    private static IEnumerable<ComparedQuestion> QuestionsOf(CutText before, CutText after)
    {
        var earlier = before.Questions.ToLookup(question => question.Id, StringComparer.Ordinal);
        var later = after.Questions.Select(question => question.Id).ToHashSet(StringComparer.Ordinal);
        return after
            .Questions.Select(question => Compared(question.Id, earlier[question.Id].FirstOrDefault()?.Lines, question.Lines))
            .Concat(
                before
                    .Questions.Where(question => !later.Contains(question.Id))
                    .Select(question => Compared(question.Id, question.Lines, after: null))
            );
    }

    private static ComparedQuestion Compared(string id, IReadOnlyList<string>? before, IReadOnlyList<string>? after)
    {
        var lines = Lines.Compared(before ?? [], after ?? []);
        var change =
            before is null ? Change.Added
            : after is null ? Change.Removed
            : lines.All(line => line.Change == Change.Same) ? Change.Same
            : Change.Changed;
        return new(id, change, lines);
    }

    private static IEnumerable<ComparedPicture> PicturesOf(ModuleFiles before, ModuleFiles after) =>
        before
            .Pictures.Keys.Union(after.Pictures.Keys, StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(file => new ComparedPicture(file, ChangeOf(file, before, after)));

    private static Change ChangeOf(string file, ModuleFiles before, ModuleFiles after) =>
        !before.Pictures.TryGetValue(file, out var earlier) ? Change.Added
        : !after.Pictures.TryGetValue(file, out var later) ? Change.Removed
        : earlier.Span.SequenceEqual(later.Span) ? Change.Same
        : Change.Changed;
}
