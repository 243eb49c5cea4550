using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Features.People;

/// <summary>Experience that the owner declares: several skills under one reason.</summary>
public sealed class DeclaredForm
{
    [Required(ErrorMessage = "Skills: choose at least one"), MinLength(1, ErrorMessage = "Skills: choose at least one")]
    public string[]? Skills { get; set; }

    [Required(ErrorMessage = "Day: write from when it counts")]
    public DateOnly? On { get; set; }

    [StringLength(1000, ErrorMessage = "Experience: at most 1000 letters")]
    public string? Reason { get; set; }

    /// <summary>Where she stands in what was chosen; a skill that is not the salon's is not chosen.</summary>
    internal IReadOnlyList<Standing> Standings(Team team, Person person) =>
        [.. team.Of(person.Id).Where(standing => Skills!.Contains(standing.Skill.Value, StringComparer.Ordinal))];

    internal IReadOnlyList<string> Names(Names names) => [.. Skills!.Select(skill => names.Of(new SkillCode(skill)))];
}

/// <summary>Grooms of one skill that were done somewhere else, and how that is known.</summary>
public sealed class ElsewhereForm
{
    [Required(ErrorMessage = "Skill: choose one")]
    public string? Skill { get; set; }

    [Required(ErrorMessage = "Last day of it: write it")]
    public DateOnly? On { get; set; }

    [Required(ErrorMessage = "Grooms: write how many"), Range(1, 1000, ErrorMessage = "Grooms: a number from 1 to 1000")]
    public int? Grooms { get; set; }

    [StringLength(1000, ErrorMessage = "Source: at most 1000 letters")]
    public string? Source { get; set; }
}
