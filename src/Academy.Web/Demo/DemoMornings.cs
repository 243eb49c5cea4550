using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Web.Demo;

/// <summary>What is noted on every working day: who is in, and how warm the rooms are.</summary>
internal sealed class DemoMornings(DemoStory story)
{
    public HashSet<PersonId> TickIn(DateOnly day)
    {
        var here = DemoCast.All.Where(member => story.Floor.Book.Find(member.Id)?.WorksOn(day) == true).ToArray();
        var off = day.DayNumber % here.Length;
        var isIn = here.Where((member, i) => i != off || day == story.Today || member == DemoCast.Bettina && off % 2 == 0)
            .ToArray();
        foreach (var member in isIn)
            story.Tell(
                Staffing.Tick(story.Floor.Book.Find(member.Id)!, day, isIn: true, DemoStory.Owner),
                DemoCast.Owner.Id,
                story.At(day, 8, 15)
            );
        return [.. isIn.Select(member => member.Id)];
    }

    public void ReadTheRoom(DateOnly day)
    {
        foreach (var hour in (int[])[8, 13])
        {
            var at = day == story.Today ? story.Now.AddMinutes(-35) : story.At(day, hour, 30);
            var reading = new RoomReading(at, TenthsOn(day) + (hour == 13 ? 18 : 0), 48 + story.Chance.Below(18));
            story.Tell(Keeping.ReadRoom(reading, "table room", at), DemoCast.Bettina.Id, at);
        }
    }

    // A hot week each July, a mild rest of the year; the heating holds the winter.
    private int TenthsOn(DateOnly day)
    {
        var isHotWeek = day is { Month: 7, Day: >= 14 and <= 19 };
        var season = 26 * Math.Cos((day.DayOfYear - 200) / 365.0 * 2 * Math.PI);
        return (isHotWeek ? 268 : 200 + (int)season) + story.Chance.Below(14);
    }
}
