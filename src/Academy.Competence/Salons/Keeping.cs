using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Salons;

/// <summary>The salon's own settings: opening, house rules, skills, thresholds, room readings, editions.</summary>
public static class Keeping
{
    /// <summary>Opens a salon with its first owner, the skills every salon starts with and their thresholds.</summary>
    public static Decision Open(Words name, TimeZoneInfo zone, Person owner, DateOnly today)
    {
        return Decision.Of(Against(), () => Facts().ToListed());

        IEnumerable<Reason> Against()
        {
            if (name.IsEmpty || string.IsNullOrWhiteSpace(owner.Name))
                yield return new WordsNeeded(WordsFor.Name);
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
        }

        IEnumerable<Fact> Facts()
        {
            yield return new SalonOpened(name, zone.Id);
            yield return new PersonDescribed(
                owner.Id,
                new(owner.Name),
                owner.Role,
                owner.JoinedOn,
                owner.EndsOn,
                owner.IsUnder18,
                owner.IsDeputy
            );
            yield return new HouseRulesSet(new HouseRules());
            foreach (var skill in SkillBook.Defaults)
                yield return new SkillDescribed(skill.Code, skill.Kind, skill.Name, skill.Modules, skill.IsRetired);
            foreach (var skill in SkillBook.Defaults)
                yield return new ThresholdSet(DefaultThresholds.For(skill.Code, today));
        }
    }

    /// <summary>Describes the salon and its vet.</summary>
    public static Decision Describe(Words name, Words vetName, Words vetPhone, Person owner) =>
        Decision.Of(
            owner.Role != Role.Owner ? [new OwnerOnly()]
                : name.IsEmpty ? [new WordsNeeded(WordsFor.Name)]
                : [],
            new SalonDescribed(name, vetName, vetPhone)
        );

    /// <summary>Sets the house rules.</summary>
    public static Decision SetHouseRules(HouseRules rules, Person owner) =>
        Decision.Of(OwnersOnly(owner), new HouseRulesSet(rules));

    /// <summary>Adds or changes a skill.</summary>
    public static Decision DescribeSkill(Skill skill, Skill? before, Person owner)
    {
        return Decision.Of(Against(), new SkillDescribed(skill.Code, skill.Kind, skill.Name, skill.Modules, skill.IsRetired));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (string.IsNullOrWhiteSpace(skill.Name))
                yield return new WordsNeeded(WordsFor.Name);
            if (before is not null && before.Kind != skill.Kind)
                yield return new SkillCodeTaken(skill.Code);
        }
    }

    /// <summary>
    /// Lets skills ask for more modules. Whoever is alone in one keeps that while there is time for what is new
    /// (<see cref="HouseRules.ModulesDueInDays"/>).
    /// </summary>
    /// <param name="more">Skills and what each asks for besides; what one asks for already, and skills that are not there, change nothing.</param>
    /// <param name="book">The salon.</param>
    /// <param name="owner">Who decides it.</param>
    public static Decision AskFor(IEnumerable<(SkillCode Skill, ModuleName Module)> more, SalonBook book, Person owner)
    {
        var asked = more.ToLookup(one => one.Skill, one => one.Module);
        return Decision.Of(OwnersOnly(owner), () => book.Skills.Select(Described).OfType<Fact>().ToListed());

        SkillDescribed? Described(Skill skill)
        {
            var modules = skill.Modules.Concat(asked[skill.Code]).Distinct().ToListed();
            return modules == skill.Modules ? null : new(skill.Code, skill.Kind, skill.Name, modules, skill.IsRetired);
        }
    }

    /// <summary>Sets a new version of a threshold from a day on, today at the earliest.</summary>
    public static Decision SetThreshold(Threshold threshold, Person owner, DateOnly today)
    {
        return Decision.Of(Against(), new ThresholdSet(threshold));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (threshold.FromDay < today)
                yield return new FromDayPast(threshold.FromDay);
        }
    }

    /// <summary>The owner erases the free words of one entry of the ledger. What the entry says in codes and numbers stays.</summary>
    /// <param name="entry">Its number.</param>
    /// <param name="hasWords">Whether it holds free words that are not erased yet.</param>
    /// <param name="owner">Who erases them.</param>
    /// <param name="why">Why, without repeating them.</param>
    public static Decision EraseWords(long entry, bool hasWords, Person owner, Words why)
    {
        return Decision.Of(Against(), new WordsErased(entry, why));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (!hasWords)
                yield return new NothingToErase();
            if (why.IsEmpty)
                yield return new WordsNeeded(WordsFor.Erasure);
        }
    }

    /// <summary>Keeps a room reading; -10 to 60 °C and 0 to 100 % can be a room, anything else is a slip.</summary>
    public static Decision ReadRoom(RoomReading reading, string room, DateTimeOffset now)
    {
        return Decision.Of(Against(), new RoomRead(reading, room));

        IEnumerable<Reason> Against()
        {
            if (reading.TenthsC is < -100 or > 600 || reading.HumidityPct is < 0 or > 100)
                yield return new ReadingNotPlausible();
            if (reading.At > now + Logging.Grace)
                yield return new InTheFuture(reading.At);
        }
    }

    /// <summary>Notes the library's edition of a module, so that what was asked on a day can be told later.</summary>
    public static Decision SeeEdition(
        ModuleName module,
        int edition,
        int safetyCriticalSince,
        int? refresherDays,
        bool renewedEachSpring,
        string hash,
        DateOnly? catchUpBy = null
    ) =>
        Decision.Of(
            [],
            new ModuleEditionSeen(module, edition, safetyCriticalSince, refresherDays, renewedEachSpring, hash, catchUpBy)
        );

    private static IEnumerable<Reason> OwnersOnly(Person by) => by.Role == Role.Owner ? [] : [new OwnerOnly()];
}
