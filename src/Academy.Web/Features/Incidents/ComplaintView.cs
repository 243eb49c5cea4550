using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Incidents;

/// <summary>A complaint as the owner types it.</summary>
public sealed class ComplaintForm
{
    public Guid Operation { get; set; }

    public long Version { get; set; }

    public string? Person { get; set; }

    public IList<string> Techniques { get; set; } = [];

    public string? Says { get; set; }

    public Words Words => new(Says?.Trim() ?? "");

    public static ComplaintForm For(OneGroom one, Guid operation)
    {
        var doers = one.Groom.Doers.ToList();
        return new()
        {
            Operation = operation,
            Version = one.Known.Version,
            Person = doers.Count == 1 ? doers[0].Value.ToString() : null,
        };
    }

    public PersonId? Chosen(Groom groom) =>
        Guid.TryParse(Person, out var person) && groom.Doers.Contains(new PersonId(person)) ? new PersonId(person) : null;

    public Listed<SkillCode> Parts(Groom groom) =>
        Techniques
            .Select(code => new SkillCode(code))
            .Where(code => groom.Parts.Any(part => part.Technique == code))
            .Distinct()
            .ToListed();
}

/// <summary>The page on which a complaint is upheld.</summary>
public sealed record ComplaintView(
    string Title,
    string Groomed,
    IReadOnlyList<string> Before,
    IReadOnlyList<Pick> People,
    IReadOnlyList<Pick> Techniques,
    Outcome Outcome
)
{
    public static ComplaintView Of(OneGroom one, IReadOnlyList<Foreseen> foreseen, ComplaintForm form)
    {
        var names = one.Names;
        return new(
            one.Title,
            one.Groomed,
            [
                .. one.Story.Complaints.Select(upheld =>
                    $"A complaint was upheld {names.Time.Ago(upheld.At)}: {names.Of(upheld.Person)}, {Counts.And([.. upheld.Skills.Select(names.Of)])}."
                ),
            ],
            [.. one.Groom.Doers.Select(doer => new Pick(doer.Value.ToString(), names.Of(doer)))],
            [
                .. one
                    .Groom.Parts.Select(part => part.Technique)
                    .Distinct()
                    .Select(technique => new Pick(technique.Value, names.Of(technique))),
            ],
            form.Chosen(one.Groom) is { } person
                ? new Outcome(
                    $"{names.Of(person)}: one that needed fixing",
                    [
                        $"It counts as one groom of {names.Of(person)} that needed fixing, in the coat and in the techniques named.",
                        .. Say.Follows(foreseen, names),
                    ],
                    Effect.All(foreseen, names)
                )
                : new Outcome("Choose whose groom it was", [], [])
        );
    }
}
