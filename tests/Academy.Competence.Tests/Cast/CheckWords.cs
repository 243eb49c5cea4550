using Academy.Competence.DogChecks;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Cast;

/// <summary>Small words for asking the dog check; unless said otherwise the two seniors are there, all but Olga and Uli are in, and the room is cool.</summary>
internal static class CheckWords
{
    public static RoomReading Reading(int tenthsC, int? humidity = null, double hoursAgo = 1) =>
        new(Now.AddHours(-hoursAgo), tenthsC, humidity);

    public static DogCheckAnswer Check(
        DogAsked asked,
        TeamWords? team = null,
        Person[]? isIn = null,
        RoomReading? reading = null,
        DateTimeOffset? now = null
    ) => CheckWithoutAReading(asked, team, isIn, reading ?? Reading(210), now);

    public static DogCheckAnswer CheckWithoutAReading(
        DogAsked asked,
        TeamWords? team = null,
        Person[]? isIn = null,
        RoomReading? reading = null,
        DateTimeOffset? now = null
    ) =>
        DogCheck.Of(
            asked,
            (team ?? TeamWords.TwoSeniors).At(now ?? Now),
            (isIn ?? [Rosa, Dora, Pim, Mei]).Select(person => person.Id).ToHashSet(),
            reading,
            House,
            now ?? Now,
            London
        );

    public static PersonAnswer AnswerFor(Person person, DogCheckAnswer answer) =>
        answer.People.Single(one => one.Person == person.Id);

    public static IEnumerable<PersonId> MayAlone(DogCheckAnswer answer) => answer.Alone.Select(one => one.Person);
}
