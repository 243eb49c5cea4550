using Academy.Competence;
using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;

namespace Academy.Modules.Comparing;

/// <summary>Compares two texts line by line, and within lines word by word.</summary>
internal static class Lines
{
    public static Listed<ComparedLine> Compared(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        var both = SideBySideDiffBuilder.Diff(Text(before), Text(after), ignoreWhiteSpace: false);
        return
        [
            .. both.OldText.Lines.Zip(both.NewText.Lines, Line).Where(line => line.Change != Change.Same || !line.After.IsEmpty),
        ];
    }

    private static string Text(IReadOnlyList<string> lines) => string.Join('\n', lines);

    private static ComparedLine Line(DiffPiece before, DiffPiece after) =>
        (before.Type, after.Type) switch
        {
            (ChangeType.Unchanged, _) => new(Change.Same, [.. Whole(before)], [.. Whole(after)]),
            (ChangeType.Imaginary, _) => new(Change.Added, [], [.. Whole(after)]),
            (_, ChangeType.Imaginary) => new(Change.Removed, [.. Whole(before)], []),
            _ => new(Change.Changed, [.. Pieces(before)], [.. Pieces(after)]),
        };

    private static IEnumerable<Piece> Whole(DiffPiece line) =>
        string.IsNullOrEmpty(line.Text) ? [] : [new(line.Text, IsChanged: false)];

    // Neighbours of one kind become one piece: what is read out as "added" is a run of words and not each of them.
    private static IEnumerable<Piece> Pieces(DiffPiece line)
    {
        Piece? run = null;
        foreach (var word in line.SubPieces.Where(word => word.Type != ChangeType.Imaginary && !string.IsNullOrEmpty(word.Text)))
        {
            var piece = new Piece(word.Text, word.Type != ChangeType.Unchanged);
            if (run is not null && run.IsChanged != piece.IsChanged)
                yield return run;
            run = run is not null && run.IsChanged == piece.IsChanged ? run with { Words = run.Words + piece.Words } : piece;
        }
        if (run is not null)
            yield return run;
    }
}
