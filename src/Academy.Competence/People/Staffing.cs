using Academy.Competence.Facts;

namespace Academy.Competence.People;

/// <summary>Who works here: joining, changing, leaving and coming back, and who is in today.</summary>
public static class Staffing
{
    /// <summary>Describes a person: new, or anew.</summary>
    /// <param name="person">As she is to be.</param>
    /// <param name="before">As she is; null when she joins.</param>
    /// <param name="owner">Who says so.</param>
    /// <param name="owners">Owners who work here today.</param>
    public static Decision Describe(Person person, Person? before, Person owner, int owners)
    {
        return Decision.Of(
            Against(),
            new PersonDescribed(
                person.Id,
                new Words(person.Name),
                person.Role,
                person.JoinedOn,
                person.EndsOn,
                person.IsUnder18,
                person.IsDeputy,
                person.WritesModules ? true : null
            )
        );

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (string.IsNullOrWhiteSpace(person.Name))
                yield return new WordsNeeded(WordsFor.Name);
            if (person.EndsOn < person.JoinedOn)
                yield return new BeforeJoining(person.JoinedOn);
            if (before is { Role: Role.Owner } && (person.Role != Role.Owner || person.EndsOn is not null) && owners <= 1)
                yield return new LastOwner();
        }
    }

    /// <summary>A person leaves on this day.</summary>
    public static Decision Leave(Person person, DateOnly on, Person owner, int owners)
    {
        return Decision.Of(Against(), new PersonLeft(person.Id, on));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (person.LeftOn is not null)
                yield return new NotWorkingHere(person.Id);
            if (on < person.JoinedOn)
                yield return new BeforeJoining(person.JoinedOn);
            if (person.Role == Role.Owner && owners <= 1)
                yield return new LastOwner();
        }
    }

    /// <summary>A person who left is back from this day.</summary>
    public static Decision ComeBack(Person person, DateOnly on, Person owner)
    {
        return Decision.Of(Against(), new PersonCameBack(person.Id, on));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (person.LeftOn is null)
                yield return new HereAlready();
        }
    }

    /// <summary>Ticks who is in on a day; seniors, the owner and deputies keep the list, and everybody may tick herself.</summary>
    public static Decision Tick(Person person, DateOnly day, bool isIn, Person by)
    {
        return Decision.Of(Against(), new PresenceTicked(person.Id, day, isIn));

        IEnumerable<Reason> Against()
        {
            if (!person.WorksOn(day))
                yield return new NotWorkingHere(person.Id);
            if (!by.MayJudgeByRole && !by.IsDeputy && by.Id != person.Id)
                yield return new SeniorOrOwnerOnly(by.Role);
        }
    }
}
