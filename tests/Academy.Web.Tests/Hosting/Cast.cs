using Academy.Competence;
using Academy.Competence.People;

namespace Academy.Web.Tests.Hosting;

/// <summary>The people of a test salon, named for what they are for.</summary>
/// <param name="Salon">Their salon.</param>
/// <param name="Name">Its name.</param>
/// <param name="Owner">Ines decides.</param>
/// <param name="Senior">Rosa judges.</param>
/// <param name="SecondSenior">Dora is the second pair of eyes.</param>
/// <param name="Junior">Pim learns.</param>
/// <param name="SecondJunior">Juno learns too, and is under 18.</param>
public sealed record Cast(
    SalonId Salon,
    string Name,
    Person Owner,
    Person Senior,
    Person SecondSenior,
    Person Junior,
    Person SecondJunior
)
{
    public static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Amsterdam");

    public IEnumerable<Person> Others => [Senior, SecondSenior, Junior, SecondJunior];

    public IEnumerable<Person> Everybody => [Owner, .. Others];

    internal static Cast Of(string name, Func<Guid> id, DateOnly joined)
    {
        return new Cast(
            new SalonId(id()),
            name,
            Named("Ines", Role.Owner),
            Named("Rosa", Role.Senior),
            Named("Dora", Role.Senior),
            Named("Pim", Role.Junior),
            Named("Juno", Role.Junior) with
            {
                IsUnder18 = true,
            }
        );

        Person Named(string who, Role role) => new(new PersonId(id()), who, role, joined);
    }
}
