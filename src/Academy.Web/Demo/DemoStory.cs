using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Web.Demo;

/// <summary>What all parts of the demo's history share: the floor, the calendar, chance, ids, and what is still to come.</summary>
internal sealed class DemoStory(DateTimeOffset now, TimeZoneInfo zone)
{
    private readonly List<(DateTimeOffset At, Action Happens)> _ahead = [];
    private (DateOnly Day, Team? Team) _morning;
    private long _ids;

    public static Person Owner { get; } = PersonOf(DemoCast.Owner, DateOnly.MinValue);

    public DemoFloor Floor { get; } = new();

    public SplitMix64 Chance { get; } = new(1848);

    public TimeZoneInfo Zone { get; } = zone;

    public DateTimeOffset Now { get; } = now;

    public DateOnly Today { get; } = SalonDay.Of(now, zone);

    public static Person PersonOf(CastMember member, DateOnly joined) =>
        new(member.Id, member.Name, member.Role, joined, IsUnder18: member.IsUnder18, IsDeputy: member.IsDeputy);

    public DateTimeOffset At(DateOnly day, int hour, int minute = 0)
    {
        var local = day.ToDateTime(new TimeOnly(hour, minute));
        return new DateTimeOffset(local, Zone.GetUtcOffset(local)).ToUniversalTime();
    }

    public int DaysAgo(DateOnly day) => Today.DayNumber - day.DayNumber;

    public Guid NextId()
    {
        _ids++;
        return new Guid(
            0x0DE30000,
            (short)(_ids >> 16 & 0x7FFF),
            0x7000,
            0x80,
            0,
            0,
            0,
            0,
            0,
            (byte)(_ids >> 8 & 0xFF),
            (byte)(_ids & 0xFF)
        );
    }

    /// <summary>Keeps what was decided; a refusal is a mistake in the story.</summary>
    public void Tell(Decision decision, PersonId by, DateTimeOffset at) => Floor.Tell(decision, by, at);

    /// <summary>Lets something happen on a later day.</summary>
    public void Later(DateTimeOffset at, Action happens) => _ahead.Add((at, happens));

    /// <summary>What was left for this day, in its order.</summary>
    public (DateTimeOffset At, Action Happens)[] Due(DateOnly day)
    {
        var end = SalonDay.End(day, Zone);
        var due = _ahead.Where(one => one.At < end && one.At <= Now).OrderBy(one => one.At).ToArray();
        _ahead.RemoveAll(due.Contains);
        return due;
    }

    // Seniors' standings do not change between a morning and its evening; reading them once a day keeps the telling quick.
    public Team TeamOn(DateOnly day)
    {
        if (_morning.Day != day)
            _morning = (day, Floor.Team(At(day, 8, 45)));
        return _morning.Team!;
    }

    public void Keep(SignOffDraft draft, GroomId groom, PersonId senior, DateTimeOffset at)
    {
        var team = TeamOn(SalonDay.Of(at, Zone));
        var story = Floor.Story(groom);
        var signer = new Signer(
            Floor.Book.Find(senior)!,
            team.Of(senior).ToDictionary(standing => standing.Skill, standing => standing.Kind),
            DaysIn: [SalonDay.Of(story.Groom.EndedAt, Zone).AddDays(1)]
        );
        Floor.Tell(SigningOff.Decide(draft, story, signer, new SkillKinds(Floor.Book.Skills), at, Zone), senior, at);
    }
}
