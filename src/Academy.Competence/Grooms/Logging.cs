using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Competence.Grooms;

/// <summary>Logging what was really done: the log is never refused for what somebody may not do, only for what cannot be true.</summary>
public static class Logging
{
    /// <summary>The groom as a fact, told for the first time or told again by its logger before anybody signed it off.</summary>
    /// <param name="groom">What is told.</param>
    /// <param name="earlier">What was told before under this id; null the first time.</param>
    /// <param name="by">Who tells it.</param>
    /// <param name="now">When it is told. A device clock that runs ahead is refused with the time it claims.</param>
    /// <param name="zone">The salon's zone.</param>
    public static Decision Log(Groom groom, GroomStory? earlier, Person by, DateTimeOffset now, TimeZoneInfo zone) =>
        Decision.Of(Against(groom, earlier, by, now, zone), new GroomLogged(groom));

    /// <summary>The start of a groom: the dog is on the table.</summary>
    public static Decision Start(
        GroomId groom,
        DogId dog,
        Person by,
        PersonId? watcher,
        DateTimeOffset at,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        return Decision.Of(Against(), new GroomStarted(groom, dog, by.Id, watcher, at));

        IEnumerable<Reason> Against()
        {
            if (!by.WorksOn(SalonDay.Of(at, zone)))
                yield return new NotWorkingHere(by.Id);
            if (at > now + Grace)
                yield return new InTheFuture(at);
            if (watcher == by.Id)
                yield return new WatchedByHerself();
        }
    }

    /// <summary>A started groom that never happened.</summary>
    public static Decision Abandon(GroomId groom, PersonId startedBy, Person by, Words why) =>
        Decision.Of(startedBy == by.Id || by.Role == Role.Owner ? [] : [new NotHerGroom()], new GroomAbandoned(groom, why));

    /// <summary>A device clock may run ahead by this much before its time is refused.</summary>
    public static readonly TimeSpan Grace = TimeSpan.FromMinutes(5);

    private static IEnumerable<Reason> Against(
        Groom groom,
        GroomStory? earlier,
        Person by,
        DateTimeOffset now,
        TimeZoneInfo zone
    ) => AgainstTimes(groom, now).Concat(AgainstWork(groom)).Concat(AgainstTeller(groom, earlier, by, zone));

    private static IEnumerable<Reason> AgainstTimes(Groom groom, DateTimeOffset now)
    {
        if (groom.EndedAt > now + Grace)
            yield return new InTheFuture(groom.EndedAt);
        if (groom.EndedAt < groom.StartedAt)
            yield return new EndsBeforeItStarts();
        if (groom.EndedAt - groom.StartedAt > TimeSpan.FromDays(1))
            yield return new LongerThanADay();
        if (IsMuzzleStillOn(groom))
            yield return new MuzzleNeverOff();
    }

    private static bool IsMuzzleStillOn(Groom groom)
    {
        var muzzle = groom
            .Checks.Where(made => made.Check is WelfareCheck.MuzzleOn or WelfareCheck.MuzzleOff)
            .OrderBy(made => made.At);
        return muzzle.LastOrDefault() is { Check: WelfareCheck.MuzzleOn };
    }

    private static IEnumerable<Reason> AgainstWork(Groom groom)
    {
        if (string.IsNullOrEmpty(groom.Coat.Value))
            yield return new NoCoatChosen();
        if (groom.SecondCoat == groom.Coat)
            yield return new SameCoatTwice(groom.Coat);
        if (groom.Parts.IsEmpty && groom.WholeFinishBy is null && !groom.EndedEarly)
            yield return new NoWorkAgreed();
        if (groom.Watcher is { } watcher && groom.Doers.Contains(watcher))
            yield return new WatchedByHerself();
        if (groom.EndedEarly && groom.Notes.IsEmpty && groom.Phrases.IsEmpty)
            yield return new WordsNeeded(WordsFor.EndedEarly);
    }

    private static IEnumerable<Reason> AgainstTeller(Groom groom, GroomStory? earlier, Person by, TimeZoneInfo zone)
    {
        if (!by.WorksOn(SalonDay.Of(groom.EndedAt, zone)))
            yield return new NotWorkingHere(by.Id);
        if (groom.By != by.Id || earlier is not null && earlier.Groom.By != by.Id)
            yield return new NotHerGroom();
        if (earlier is { IsSignedOff: true })
            yield return new SignedOffAlready();
    }
}
