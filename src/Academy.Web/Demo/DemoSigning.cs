using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Web.Demo;

/// <summary>Who stands beside a junior, and what the senior says of the groom.</summary>
internal sealed class DemoSigning(DemoStory story)
{
    private readonly DemoTrouble _trouble = new(story);
    private readonly Dictionary<(PersonId, SkillCode), int> _practised = [];
    private int _slips;
    private int _forgotten;

    /// <summary>How often a junior has groomed such a coat.</summary>
    public int Practised(CastMember member, SkillCode coat) => _practised.GetValueOrDefault((member.Id, coat));

    public void Judge(CastMember member, Groom groom, DateOnly day, Team team, HashSet<PersonId> isIn)
    {
        if (member.Role != Role.Junior)
            return;
        var practised = _practised[(member.Id, groom.Coat)] = _practised.GetValueOrDefault((member.Id, groom.Coat)) + 1;
        var senior =
            groom.Watcher ?? (IsInspected(member, groom.Coat, day, team) ? WatcherFor(groom.Coat, member, team, isIn) : null);
        // What was groomed yesterday afternoon and today still waits.
        if (senior is not { } judge || story.DaysAgo(day) == 0 || story.DaysAgo(day) == 1 && groom.StartedAt.Hour >= 12)
            return;

        var rate = Fate(member, groom, day) ?? member.Settles + (member.Starts - member.Settles) * Math.Exp(-practised / 14.0);
        var isSuitable = story.Chance.Below(100) >= rate;
        var at = SignAt(member, groom, day);
        if (at > story.Now)
            return;
        void Sign() => SignOff(groom, judge, isSuitable, at);
        if (SalonDay.Of(at, story.Zone) == day)
            Sign();
        else
            story.Later(at, Sign);
        _trouble.Befall(member, groom, judge, day, at);
    }

    public PersonId? WatcherFor(SkillCode coat, CastMember member, Team team, HashSet<PersonId> isIn)
    {
        var seniors = team.MayJudge(coat)
            .Where(senior => isIn.Contains(senior.Id) && senior.Id != member.Id && senior.Role == Role.Senior)
            .ToArray();
        return seniors.Length == 0 ? null : seniors[story.Chance.Below(seniors.Length)].Id;
    }

    private bool IsInspected(CastMember member, SkillCode coat, DateOnly day, Team team) =>
        team[member.Id, coat] is { Tally.SoloSinceClearance: var solo }
        && (solo <= 10 || solo % 3 == 0 || member == DemoCast.Idris && coat == SkillBook.Smooth && story.DaysAgo(day) < 14);

    // The end of the story is written, not drawn: Tamsin slips in combination coats, Idris once or twice in smooth ones.
    private double? Fate(CastMember member, Groom groom, DateOnly day) =>
        (story.DaysAgo(day), groom.Coat) switch
        {
            (< 45, var coat) when member == DemoCast.Tamsin && coat == SkillBook.Combination => 100,
            (< 14, var coat) when member == DemoCast.Idris && coat == SkillBook.Smooth && _slips++ < 2 => 100,
            _ => null,
        };

    private DateTimeOffset SignAt(CastMember member, Groom groom, DateOnly day)
    {
        var isForgotten =
            member == DemoCast.Perpetua && story.DaysAgo(day) is < 60 and > 30 && groom.Watcher is not null && _forgotten < 2;
        _forgotten += isForgotten ? 1 : 0;
        return isForgotten ? groom.EndedAt.AddDays(8) : story.At(day, 17, 10 + story.Chance.Below(40));
    }

    private void SignOff(Groom groom, PersonId senior, bool isSuitable, DateTimeOffset at)
    {
        // Most often the finish is not there yet and nobody had to step in: the techniques were right all the same.
        var wasSteppedIn = !isSuitable && story.Chance.Below(10) < 3;
        var criteria = isSuitable ? Criteria.AllMet : Criteria.AllMet with { Finish = Mark.NotYet };
        var level =
            wasSteppedIn ? SupportLevel.TalkedThrough
            : story.Chance.Below(3) == 0 ? SupportLevel.NotNeeded
            : SupportLevel.StoodBy;
        Words says = isSuitable ? Words.None : new("Comb to the skin before the scissors, then look at the outline from behind.");
        var draft = new SignOffDraft(new(story.NextId()), groom.By, HasWatched: true, level, criteria, [], [], says);
        story.Keep(draft, groom.Id, senior, at);
    }
}
