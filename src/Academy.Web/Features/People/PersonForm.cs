using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.People;

namespace Academy.Web.Features.People;

/// <summary>A person as the owner describes her.</summary>
public sealed class PersonForm
{
    [
        Required(ErrorMessage = "Name: write what people here call her"),
        StringLength(80, ErrorMessage = "Name: at most 80 letters")
    ]
    public string? Name { get; set; }

    [Required(ErrorMessage = "Role: choose one"), EnumDataType(typeof(Role), ErrorMessage = "Role: choose one")]
    public string? Role { get; set; }

    [Required(ErrorMessage = "First day: write it")]
    public DateOnly? JoinedOn { get; set; }

    public DateOnly? EndsOn { get; set; }

    public bool IsUnder18 { get; set; }

    public bool IsDeputy { get; set; }

    public bool WritesModules { get; set; }

    internal static PersonForm Of(Person person) =>
        new()
        {
            Name = person.Name,
            Role = person.Role.ToString(),
            JoinedOn = person.JoinedOn,
            EndsOn = person.EndsOn,
            IsUnder18 = person.IsUnder18,
            IsDeputy = person.IsDeputy,
            WritesModules = person.WritesModules,
        };

    internal Person Person(PersonId id) =>
        new(id, Name!.Trim(), Enum.Parse<Role>(Role!), JoinedOn!.Value, EndsOn, LeftOn: null, IsUnder18, IsDeputy, WritesModules);
}
