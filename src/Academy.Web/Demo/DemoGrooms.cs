using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Web.Demo;

/// <summary>Who grooms which dog, alone or with somebody beside.</summary>
internal sealed class DemoGrooms(DemoStory story, DemoSigning signing, Dog[] dogs)
{
    private readonly DemoWork _work = new(story, signing);
    private readonly Dictionary<(PersonId, SkillCode), DateOnly> _lastDone = [];
    private bool _wentAhead;

    public void Groom(DateOnly day, HashSet<PersonId> isIn)
    {
        var team = story.TeamOn(day);
        var free = dogs.OrderBy(_ => story.Chance.Next()).ToList();
        foreach (var member in DemoCast.All.Where(member => isIn.Contains(member.Id)))
        {
            var hours = 9;
            for (var left = HowMany(member); left > 0; left--, hours += 2)
                if (Choose(member, free, day) is { } dog && story.At(day, hours + 1, 40) <= story.Now)
                {
                    free.Remove(dog);
                    Groom(member, dog, day, hours, team, isIn);
                }
        }
    }

    // One dog of the last days was done alone by somebody who was not alone for it, and was told so.
    private bool WentAhead(CastMember member, DateOnly day)
    {
        if (_wentAhead || member != DemoCast.Idris || story.DaysAgo(day) is < 1 or > 3)
            return false;
        return _wentAhead = true;
    }

    private int HowMany(CastMember member) => member.PerWeek / 4 + (story.Chance.Below(4) < member.PerWeek % 4 ? 1 : 0);

    // Whatever was longest ago goes first, so that nobody forgets a coat; Tamsin has had no silky dog since the summer.
    private Dog? Choose(CastMember member, List<Dog> free, DateOnly day) =>
        member
            .Coats.Where(coat => !(member == DemoCast.Tamsin && coat == SkillBook.Silky && story.DaysAgo(day) < 131))
            .OrderBy(coat => _lastDone.GetValueOrDefault((member.Id, coat)))
            .Select(coat => free.FirstOrDefault(dog => dog.Coat == coat && IsFor(member, dog)))
            .FirstOrDefault(dog => dog is not null);

    private static bool IsFor(CastMember member, Dog dog) =>
        member.Role != Role.Junior || !dog.Hazards.Contains(SkillBook.BiteHistory) && !dog.Hazards.Contains(SkillBook.Heart);

    private void Groom(CastMember member, Dog dog, DateOnly day, int hour, Team team, HashSet<PersonId> isIn)
    {
        var hazards = dog.HazardsOn(day, story.Floor.Book.House);
        var techniques = _work.TechniquesFor(dog, member);
        var asked = techniques.Append(dog.Coat!.Value).Concat(hazards);
        var isSolo =
            member.Role != Role.Junior
            || asked.All(skill => team[member.Id, skill] is { Kind: StandingKind.Alone, IsWatched: false });
        var watcher = isSolo ? null : signing.WatcherFor(dog.Coat!.Value, member, team, isIn);
        if (!isSolo && watcher is null)
            return;
        var isAloneAnyway = !isSolo && WentAhead(member, day);
        if (isAloneAnyway)
            watcher = null;

        var started = story.At(day, hour, story.Chance.Below(20));
        var ended = started.AddMinutes(60 + story.Chance.Below(35));
        var groom = new Groom(
            new(story.NextId()),
            dog.Id,
            member.Id,
            watcher,
            started,
            ended,
            dog.Breed,
            dog.Coat!.Value,
            dog.SecondCoat,
            (CoatCondition)(story.Chance.Below(10) / 5),
            member.Id,
            techniques.Select(technique => new Part(technique, member.Id)).ToListed(),
            DemoWork.BladesFor(techniques),
            hazards,
            hazards.Contains(SkillBook.Muzzled) ? [Consent.Muzzle] : [],
            DemoWork.ChecksFor(started, ended, hazards),
            story.Chance.Below(9) == 0 ? [Sign.Panting] : [],
            Room: null,
            EndedEarly: false,
            Phrases: [],
            Words.None
        );
        var logged = Logging.Log(groom, earlier: null, story.Floor.Book.Find(member.Id)!, ended.AddMinutes(3), story.Zone);
        if (isAloneAnyway)
            logged = logged.And(Flagging.Flag(groom, before: [], new(dog, team, isIn, story.Floor.Book.House, story.Zone)));
        story.Tell(logged, member.Id, ended.AddMinutes(3));
        _lastDone[(member.Id, groom.Coat)] = day;
        signing.Judge(member, groom, day, team, isIn);
    }
}
