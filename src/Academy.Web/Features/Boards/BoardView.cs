using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Boards;

/// <summary>Who looks at the board, at which day, and how much of it.</summary>
/// <param name="Viewer">Who looks: a senior's cells open for juniors and herself only.</param>
/// <param name="Time">The moment asked, in the salon's zone.</param>
/// <param name="IsIn">Who was ticked in on it.</param>
/// <param name="OnlyIn">Whether only those are shown.</param>
/// <param name="Ask">What every link carries on: the past moment as <c>?at=…</c>, or nothing.</param>
public sealed record BoardAsked(Person Viewer, SalonTime Time, IReadOnlySet<PersonId> IsIn, bool OnlyIn, string Ask);

/// <summary>The board: people by skills, one table for coats, techniques and hazards, and the same as a list per person.</summary>
public sealed record BoardView(int People, int In, IReadOnlyList<BoardTable> Tables, IReadOnlyList<BoardPerson> ByPerson)
{
    public static BoardView Of(Team team, BoardAsked asked)
    {
        var people = team.People.Where(person => !asked.OnlyIn || asked.IsIn.Contains(person.Id)).ToList();
        var rows = people.OrderByDescending(person => person.Role).Select(person => new BoardRow(person, team, asked)).ToList();
        var kinds = Enum.GetValues<SkillKind>().Select(kind => team.Skills.Where(skill => skill.Kind == kind).ToList());
        return new BoardView(
            team.People.Count,
            team.People.Count(person => asked.IsIn.Contains(person.Id)),
            [.. kinds.Where(skills => skills.Count > 0).Select(skills => BoardTable.Of(skills, rows))],
            [.. rows.Select(row => BoardPerson.Of(row, team.Skills))]
        );
    }
}

/// <summary>One table of the board.</summary>
/// <param name="Id">For its heading and links to it.</param>
/// <param name="Caption">What it holds.</param>
/// <param name="Size">How many columns it has room for, in fours: the style sheet keeps them wide enough.</param>
/// <param name="Columns">Its skills.</param>
/// <param name="Rows">Everybody.</param>
/// <param name="Counts">How many may do each alone.</param>
public sealed record BoardTable(
    string Id,
    string Caption,
    int Size,
    IReadOnlyList<BoardColumn> Columns,
    IReadOnlyList<BoardLine> Rows,
    IReadOnlyList<BoardCount> Counts
)
{
    internal static BoardTable Of(IReadOnlyList<Skill> skills, IReadOnlyList<BoardRow> rows) =>
        new(
            BoardWords.Id(skills[0].Kind),
            Say.Group(skills[0].Kind),
            (skills.Count + 3) / 4 * 4,
            [.. skills.Select(BoardColumn.Of)],
            [.. rows.Select(row => new BoardLine(row.Name, row.Note, row.Href, [.. skills.Select(row.Cell)]))],
            [.. skills.Select(skill => BoardCount.Of(rows.Count(row => row.MayAlone(skill.Code))))]
        );
}

/// <summary>A skill at the head of its column, with its swatch where it is one of the eight coats.</summary>
public sealed record BoardColumn(string Name, string? Coat)
{
    internal static BoardColumn Of(Skill skill) => new(skill.Name, CoatSwatch.Of(skill));
}

/// <summary>One person's line in one table.</summary>
public sealed record BoardLine(string Name, string Note, string? Href, IReadOnlyList<BoardCell> Cells);

/// <summary>Where one person stands in one skill, in a word, a shape and a line below.</summary>
/// <param name="Skill">What the salon calls it.</param>
/// <param name="Coat">Its swatch, if it has one.</param>
/// <param name="Standing">The standing's code; null where nothing has begun or the skill is off.</param>
/// <param name="Word">What stands there instead of a standing.</param>
/// <param name="Note">The line below.</param>
/// <param name="Href">The reasons; null where they are not this viewer's to see.</param>
public sealed record BoardCell(string Skill, string? Coat, string? Standing, string? Word, string? Note, string? Href);

/// <summary>How many people may do a skill alone; none and one are said in words.</summary>
public sealed record BoardCount(int Number, string? Words)
{
    internal static BoardCount Of(int number) =>
        new(
            number,
            number switch
            {
                0 => "nobody",
                1 => "one person",
                _ => null,
            }
        );
}

/// <summary>One person as a list, for a narrow screen.</summary>
public sealed record BoardPerson(string Name, string Note, string Summary, IReadOnlyList<BoardGroup> Groups, string? NotBegun)
{
    internal static BoardPerson Of(BoardRow row, IReadOnlyList<Skill> skills)
    {
        var cells = skills.Select(skill => (skill.Kind, Cell: row.Cell(skill))).ToList();
        var groups = cells
            .Where(one => one.Cell.Standing is not null)
            .GroupBy(one => one.Kind)
            .Select(group => new BoardGroup(Say.Group(group.Key), [.. group.Select(one => one.Cell)]));
        return new BoardPerson(
            row.Name,
            row.Note,
            Say.Summary(row.Kinds(skills)),
            [.. groups],
            Say.NotBegun(cells.Where(one => one.Cell.Standing is null).Select(one => one.Cell.Skill))
        );
    }
}

/// <summary>A person's coats, techniques or hazards that have begun.</summary>
public sealed record BoardGroup(string Caption, IReadOnlyList<BoardCell> Cells);

/// <summary>One person's standings while the board is made.</summary>
internal sealed class BoardRow(Person person, Team team, BoardAsked asked)
{
    private readonly bool _opens = asked.Viewer.MaySee(person);

    public string Name => person.Name;

    public string Note => BoardWords.Role(person);

    public string? Href => _opens ? $"{Paths.SkillsOf(person.Id.Value)}{asked.Ask}" : null;

    public bool MayAlone(SkillCode skill) => team[person.Id, skill] is { Kind: StandingKind.Alone, IsWatched: false };

    public IEnumerable<StandingKind> Kinds(IEnumerable<Skill> skills) =>
        skills.Select(skill => team[person.Id, skill.Code]!).Where(CellNote.HasBegun).Select(standing => standing.Kind);

    public BoardCell Cell(Skill skill)
    {
        var standing = team[person.Id, skill.Code]!;
        var begun = CellNote.HasBegun(standing);
        return new BoardCell(
            skill.Name,
            CoatSwatch.Of(skill),
            begun ? Say.Shape(standing.Kind) : null,
            begun ? null : CellNote.Instead(standing),
            begun ? CellNote.Of(standing, asked.Time) : null,
            _opens ? $"{Paths.Why(person.Id.Value, skill.Code.Value)}{asked.Ask}" : null
        );
    }
}
