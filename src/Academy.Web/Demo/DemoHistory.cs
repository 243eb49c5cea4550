using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage;

namespace Academy.Web.Demo;

/// <summary>
/// Eighteen months of the demo salon, told through the decisions that real use goes through. The same today gives the same
/// history, to the letter.
/// </summary>
internal sealed class DemoHistory
{
    private readonly DemoFloor _floor = new();
    private readonly SplitMix64 _chance = new(1848);
    private readonly TimeZoneInfo _zone = TimeZoneInfo.FindSystemTimeZoneById(DemoCast.TimeZone);
    private readonly DateTimeOffset _now;
    private readonly DateOnly _today;
    private readonly IReadOnlyList<Module> _modules;
    private readonly Dog[] _dogs;
    private readonly Dictionary<(PersonId, SkillCode), int> _practised = [];
    private readonly Dictionary<(PersonId, SkillCode), DateOnly> _lastDone = [];
    private readonly List<(DateTimeOffset At, Action Happens)> _ahead = [];
    private (DateOnly Day, Team? Team) _morning;
    private long _ids;

    private DemoHistory(DateTimeOffset now, IReadOnlyList<Module> modules)
    {
        _now = now;
        _today = SalonDay.Of(now, _zone);
        _modules = modules;
        _dogs = DemoDogs.On(_today);
    }

    /// <summary>Everything that was ever decided at the demo salon, in the order in which it was kept.</summary>
    public static IReadOnlyList<(Granted Granted, Hand Hand)> Of(DateTimeOffset now, IReadOnlyList<Module> modules) =>
        Floor(now, modules).Told;

    /// <summary>The salon's floor at the end of it.</summary>
    internal static DemoFloor Floor(DateTimeOffset now, IReadOnlyList<Module> modules)
    {
        var history = new DemoHistory(now, modules);
        history.OpenTheDoors();
        for (var day = history._today.AddDays(-DemoCast.DaysBack); day <= history._today; day = day.AddDays(1))
            history.Live(day);
        return history._floor;
    }

    private static Person Owner => PersonOf(DemoCast.Owner, DateOnly.MinValue);

    private static Person PersonOf(CastMember member, DateOnly joined) =>
        new(member.Id, member.Name, member.Role, joined, IsUnder18: member.IsUnder18, IsDeputy: member.IsDeputy);

    private DateTimeOffset At(DateOnly day, int hour, int minute = 0)
    {
        var local = day.ToDateTime(new TimeOnly(hour, minute));
        return new DateTimeOffset(local, _zone.GetUtcOffset(local)).ToUniversalTime();
    }

    private Guid NextId()
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

    private void OpenTheDoors()
    {
        var first = _today.AddDays(-DemoCast.DaysBack);
        var at = At(first, 8);
        _floor.Tell(Keeping.Open(new(DemoCast.SalonName), _zone, PersonOf(DemoCast.Owner, first), first), DemoCast.Owner.Id, at);
        _floor.Tell(
            Keeping.Describe(new(DemoCast.SalonName), new("Marram Bay Veterinary Surgery"), new("01632 960147"), Owner),
            DemoCast.Owner.Id,
            at
        );
        foreach (var module in _modules)
            _floor.Tell(
                Keeping.SeeEdition(
                    module.Name,
                    module.Edition,
                    module.SafetyCriticalSince,
                    module.RefresherDays,
                    module.RenewedEachSpring,
                    module.Hash
                ),
                DemoCast.Owner.Id,
                at
            );
        foreach (var dog in _dogs)
            _floor.Tell(DogKeeping.Describe(dog, _today), DemoCast.Owner.Id, at);
    }

    private void Live(DateOnly day)
    {
        Join(day);
        foreach (var (_, happens) in Due(day))
            happens();
        if (!IsWorkday(day))
            return;

        var isIn = TickIn(day);
        ReadTheRoom(day);
        Study(day, isIn);
        Groom(day, isIn);
        if (day.DayOfWeek == DayOfWeek.Saturday && day < _today)
            Decide(day);
    }

    private (DateTimeOffset At, Action Happens)[] Due(DateOnly day)
    {
        var end = SalonDay.End(day, _zone);
        var due = _ahead.Where(one => one.At < end && one.At <= _now).OrderBy(one => one.At).ToArray();
        _ahead.RemoveAll(due.Contains);
        return due;
    }

    private bool IsWorkday(DateOnly day) => day == _today || day.DayOfWeek is not (DayOfWeek.Sunday or DayOfWeek.Monday);

    private int DaysAgo(DateOnly day) => _today.DayNumber - day.DayNumber;

    private void Join(DateOnly day)
    {
        foreach (var member in DemoCast.All.Where(member => member.Role != Role.Owner && member.JoinedDaysAgo == DaysAgo(day)))
            _floor.Tell(
                Staffing.Describe(PersonOf(member, day), before: null, Owner, owners: 1),
                DemoCast.Owner.Id,
                At(day, 8, 5)
            );
        if (DaysAgo(day) == DemoCast.DaysBack)
            foreach (var member in DemoCast.All.Where(member => member.Role != Role.Junior))
                Declare(member, day);
        foreach (var member in DemoCast.All.Where(member => member.LeftDaysAgo == DaysAgo(day)))
            _floor.Tell(Staffing.Leave(_floor.Book.Find(member.Id)!, day, Owner, owners: 1), DemoCast.Owner.Id, At(day, 8, 5));
    }

    private void Declare(CastMember member, DateOnly day)
    {
        var at = At(day, 8, 10);
        var words = new Words("Years at the table before this book began; seen working by the owner.");
        foreach (var standing in _floor.Team(at).Of(member.Id).Where(standing => IsDeclared(member, standing.Skill)))
            _floor.Tell(
                Clearing.Declare(
                    new(NextId()),
                    standing,
                    isSomebodyAlone: false,
                    _floor.Book.Find(member.Id)!,
                    Owner,
                    day,
                    words,
                    at,
                    _zone
                ),
                DemoCast.Owner.Id,
                at
            );
    }

    private static bool IsDeclared(CastMember member, SkillCode skill) =>
        skill != SkillBook.CabinetDrying
        && skill != SkillBook.Hairless
        && (skill != SkillBook.Corded || member == DemoCast.Bettina)
        && (skill != SkillBook.Seizures || member == DemoCast.Owner);

    private HashSet<PersonId> TickIn(DateOnly day)
    {
        var here = DemoCast.All.Where(member => _floor.Book.Find(member.Id)?.WorksOn(day) == true).ToArray();
        var off = day.DayNumber % here.Length;
        var isIn = here.Where((member, i) => i != off || day == _today || member == DemoCast.Bettina && off % 2 == 0).ToArray();
        foreach (var member in isIn)
            _floor.Tell(Staffing.Tick(_floor.Book.Find(member.Id)!, day, isIn: true, Owner), DemoCast.Owner.Id, At(day, 8, 15));
        return [.. isIn.Select(member => member.Id)];
    }

    private void ReadTheRoom(DateOnly day)
    {
        foreach (var hour in (int[])[8, 13])
        {
            var at = day == _today ? _now.AddMinutes(-35) : At(day, hour, 30);
            var reading = new RoomReading(at, TenthsOn(day) + (hour == 13 ? 18 : 0), 48 + _chance.Below(18));
            _floor.Tell(Keeping.ReadRoom(reading, "table room", at), DemoCast.Bettina.Id, at);
        }
    }

    // A hot week each July, a mild rest of the year; the heating holds the winter.
    private int TenthsOn(DateOnly day)
    {
        var isHotWeek = day is { Month: 7, Day: >= 14 and <= 19 };
        var season = 26 * Math.Cos((day.DayOfYear - 200) / 365.0 * 2 * Math.PI);
        return (isHotWeek ? 268 : 200 + (int)season) + _chance.Below(14);
    }

    private void Study(DateOnly day, HashSet<PersonId> isIn)
    {
        foreach (var member in DemoCast.All.Where(member => isIn.Contains(member.Id)))
        foreach (
            var (module, state) in _modules
                .Select(module => (module, StateSoon(member, module, day)))
                .Where(one => IsDue(member, one.module, one.Item2, day))
                .Take(1)
        )
            Sit(member, module, isRefresher: state is ModuleState.RefresherOverdue or ModuleState.RefresherFailed, day);
    }

    private ModuleState StateSoon(CastMember member, Module module, DateOnly day) =>
        Knowledge
            .Of(
                [module.Name],
                [.. _floor.Book.Library],
                [.. _floor.TakenBy(member.Id)],
                day.AddDays(4),
                _zone,
                _floor.Book.House
            )[0]
            .State;

    private bool IsDue(CastMember member, Module module, ModuleState state, DateOnly day) =>
        state != ModuleState.Current
        && !(member == DemoCast.Robin && module.Name.Value == "cooling-clips")
        && Sitting
            .AgainstBeginning(
                Earlier(_floor.TakenBy(member.Id), module),
                _floor.Book.Find(member.Id)!,
                null,
                At(day, 12, 5),
                _zone
            )
            .IsEmpty;

    private static IEnumerable<Attempt> Earlier(IEnumerable<QuizTaken> taken, Module module) =>
        taken.Where(one => one.Module == module.Name).Select(one => new Attempt(one.HandedInAt, one.HasPassed));

    private void Sit(CastMember member, Module module, bool isRefresher, DateOnly day)
    {
        var earlier = Earlier(_floor.TakenBy(member.Id), module).ToArray();
        var started = At(day, 12, 10);
        if (started.AddMinutes(14) > _now)
            return;
        var seed = _chance.Below(int.MaxValue);
        var readOut = member == DemoCast.Idris && earlier.Length == 0 ? DemoCast.Caspian.Id : (PersonId?)null;
        var sitting = new Sitting(new(NextId()), member.Id, module.Name, module.Hash, isRefresher, seed, started, readOut);
        var knows = member.Role == Role.Junior && earlier.Length == 0 ? 84 : 98;
        var answers = Quizzing.Draw(module, seed, sitting.Kind).Select(question => Answer(question, knows)).ToArray();
        _floor.Tell(sitting.HandIn(module, answers, started.AddMinutes(14)), member.Id, started.AddMinutes(14));
    }

    private Answer Answer(Question question, int knows) =>
        new(question.Id, _chance.Below(100) < knows ? question.Kind.Right : Mistaken(question.Kind));

    // Another place than the right ones, an order or pairs back to front, ten times the number.
    private static Given Mistaken(QuestionKind kind) =>
        kind switch
        {
            Choice choice => new Picked([choice.Options.Index().First(option => !option.Item.IsRight).Index]),
            TrueOrFalse truth => new Picked([truth.IsTrue ? TrueOrFalse.False : TrueOrFalse.True]),
            OnPicture picture => new Picked([picture.Spots.Index().First(spot => !spot.Item.IsRight).Index]),
            Number number => new Typed((number.Amount with { Value = number.Amount.Value * 10 + 10 }).ToString()),
            _ => new Picked([.. ((Picked)kind.Right).Places.Reverse()]),
        };

    private void Groom(DateOnly day, HashSet<PersonId> isIn)
    {
        var team = TeamOn(day);
        var free = _dogs.OrderBy(_ => _chance.Next()).ToList();
        foreach (var member in DemoCast.All.Where(member => isIn.Contains(member.Id)))
        {
            var hours = 9;
            for (var left = HowMany(member); left > 0; left--, hours += 2)
                if (Choose(member, free, day) is { } dog && At(day, hours + 1, 40) <= _now)
                {
                    free.Remove(dog);
                    Groom(member, dog, day, hours, team, isIn);
                }
        }
    }

    // Seniors' standings do not change between a morning and its evening; reading them once a day keeps the telling quick.
    private Team TeamOn(DateOnly day)
    {
        if (_morning.Day != day)
            _morning = (day, _floor.Team(At(day, 8, 45)));
        return _morning.Team!;
    }

    private int HowMany(CastMember member) => member.PerWeek / 4 + (_chance.Below(4) < member.PerWeek % 4 ? 1 : 0);

    // Whatever was longest ago goes first, so that nobody forgets a coat; Tamsin has had no silky dog since the summer.
    private Dog? Choose(CastMember member, List<Dog> free, DateOnly day) =>
        member
            .Coats.Where(coat => !(member == DemoCast.Tamsin && coat == SkillBook.Silky && DaysAgo(day) < 131))
            .OrderBy(coat => _lastDone.GetValueOrDefault((member.Id, coat)))
            .Select(coat => free.FirstOrDefault(dog => dog.Coat == coat && IsFor(member, dog)))
            .FirstOrDefault(dog => dog is not null);

    private static bool IsFor(CastMember member, Dog dog) =>
        member.Role != Role.Junior || !dog.Hazards.Contains(SkillBook.BiteHistory) && !dog.Hazards.Contains(SkillBook.Heart);

    private void Groom(CastMember member, Dog dog, DateOnly day, int hour, Team team, HashSet<PersonId> isIn)
    {
        var hazards = dog.HazardsOn(day, _floor.Book.House);
        var techniques = TechniquesFor(dog, member);
        var asked = techniques.Append(dog.Coat!.Value).Concat(hazards);
        var isSolo =
            member.Role != Role.Junior
            || asked.All(skill => team[member.Id, skill] is { Kind: StandingKind.Alone, IsWatched: false });
        var watcher = isSolo ? null : WatcherFor(dog.Coat!.Value, member, team, isIn);
        if (!isSolo && watcher is null)
            return;

        var started = At(day, hour, _chance.Below(20));
        var ended = started.AddMinutes(60 + _chance.Below(35));
        var groom = new Groom(
            new(NextId()),
            dog.Id,
            member.Id,
            watcher,
            started,
            ended,
            dog.Breed,
            dog.Coat!.Value,
            dog.SecondCoat,
            (CoatCondition)(_chance.Below(10) / 5),
            member.Id,
            techniques.Select(technique => new Part(technique, member.Id)).ToListed(),
            BladesFor(techniques),
            hazards,
            hazards.Contains(SkillBook.Muzzled) ? [Consent.Muzzle] : [],
            ChecksFor(started, ended, hazards),
            _chance.Below(9) == 0 ? [Sign.Panting] : [],
            Room: null,
            EndedEarly: false,
            Phrases: [],
            Words.None
        );
        _floor.Tell(
            Logging.Log(groom, earlier: null, _floor.Book.Find(member.Id)!, ended.AddMinutes(3), _zone),
            member.Id,
            ended.AddMinutes(3)
        );
        _lastDone[(member.Id, groom.Coat)] = day;
        Judge(member, groom, day, team, isIn);
    }

    private Listed<SkillCode> TechniquesFor(Dog dog, CastMember member)
    {
        var byCoat = dog.Coat!.Value switch
        {
            var coat when coat == SkillBook.Double => (SkillCode[])[SkillBook.DeShedding, SkillBook.PadsAndFeet],
            var coat when coat == SkillBook.Wool => [SkillBook.BodyScissoring, SkillBook.PadsAndFeet],
            var coat when coat == SkillBook.Combination => [SkillBook.BodyScissoring],
            var coat when coat == SkillBook.Silky => [SkillBook.BodyScissoring, SkillBook.PadsAndFeet],
            var coat when coat == SkillBook.Wire => [SkillBook.HandStripping],
            _ => [SkillBook.DeShedding],
        };
        SkillCode[] now =
        [
            SkillBook.Bath,
            SkillBook.HandDrying,
            SkillBook.Brushing,
            .. _chance.Below(3) > 0 ? [SkillBook.Nails] : (SkillCode[])[],
        ];
        SkillCode[] then = _chance.Below(4) switch
        {
            0 => [SkillBook.Ears],
            1 when member.Role != Role.Junior || _practised.GetValueOrDefault((member.Id, dog.Coat!.Value)) > 10 =>
            [
                SkillBook.FaceScissoring,
            ],
            2 when member.Role != Role.Junior => [SkillBook.DeMatting],
            _ => [],
        };
        return now.Concat(byCoat).Concat(then).Distinct().ToListed();
    }

    private static Listed<string> BladesFor(Listed<SkillCode> techniques) =>
        techniques.Contains(SkillBook.PadsAndFeet) ? ["10"]
        : techniques.Contains(SkillBook.BodyScissoring) ? ["7F"]
        : [];

    private static Listed<CheckMade> ChecksFor(DateTimeOffset started, DateTimeOffset ended, Listed<SkillCode> hazards)
    {
        List<CheckMade> checks =
        [
            new(WelfareCheck.ArrivalPads, started),
            new(WelfareCheck.WaterBeforeBath, started.AddMinutes(4)),
            new(WelfareCheck.WaterAfterBath, started.AddMinutes(28)),
            new(WelfareCheck.WaterAfterGroom, ended),
        ];
        if (hazards.Contains(SkillBook.Muzzled))
            checks.AddRange([
                new(WelfareCheck.MuzzleOn, started.AddMinutes(40)),
                new(WelfareCheck.MuzzleBreak, started.AddMinutes(42)),
                new(WelfareCheck.MuzzleOff, started.AddMinutes(45)),
            ]);
        return checks.OrderBy(check => check.At).ToListed();
    }

    private PersonId? WatcherFor(SkillCode coat, CastMember member, Team team, HashSet<PersonId> isIn)
    {
        var seniors = team.MayJudge(coat)
            .Where(senior => isIn.Contains(senior.Id) && senior.Id != member.Id && senior.Role == Role.Senior)
            .ToArray();
        return seniors.Length == 0 ? null : seniors[_chance.Below(seniors.Length)].Id;
    }

    private void Judge(CastMember member, Groom groom, DateOnly day, Team team, HashSet<PersonId> isIn)
    {
        if (member.Role != Role.Junior)
            return;
        var practised = _practised[(member.Id, groom.Coat)] = _practised.GetValueOrDefault((member.Id, groom.Coat)) + 1;
        var senior =
            groom.Watcher ?? (IsInspected(member, groom.Coat, day, team) ? WatcherFor(groom.Coat, member, team, isIn) : null);
        // What was groomed yesterday afternoon and today still waits.
        if (senior is not { } judge || DaysAgo(day) == 0 || DaysAgo(day) == 1 && groom.StartedAt.Hour >= 12)
            return;

        var rate = Fate(member, groom, day) ?? member.Settles + (member.Starts - member.Settles) * Math.Exp(-practised / 14.0);
        var isSuitable = _chance.Below(100) >= rate;
        var at = SignAt(member, groom, day);
        if (at > _now)
            return;
        void Sign() => SignOff(groom, judge, isSuitable, at);
        if (SalonDay.Of(at, _zone) == day)
            Sign();
        else
            _ahead.Add((at, Sign));
        Trouble(member, groom, judge, day, at);
    }

    private bool IsInspected(CastMember member, SkillCode coat, DateOnly day, Team team) =>
        team[member.Id, coat] is { Tally.SoloSinceClearance: var solo }
        && (solo <= 10 || solo % 3 == 0 || member == DemoCast.Idris && coat == SkillBook.Smooth && DaysAgo(day) < 14);

    // The end of the story is written, not drawn: Tamsin slips in combination coats, Idris once or twice in smooth ones.
    private double? Fate(CastMember member, Groom groom, DateOnly day) =>
        (DaysAgo(day), groom.Coat) switch
        {
            (< 45, var coat) when member == DemoCast.Tamsin && coat == SkillBook.Combination => 100,
            (< 14, var coat) when member == DemoCast.Idris && coat == SkillBook.Smooth && _slips++ < 2 => 100,
            _ => null,
        };

    private DateTimeOffset SignAt(CastMember member, Groom groom, DateOnly day)
    {
        var isForgotten =
            member == DemoCast.Perpetua && DaysAgo(day) is < 60 and > 30 && groom.Watcher is not null && _forgotten < 2;
        _forgotten += isForgotten ? 1 : 0;
        return isForgotten ? groom.EndedAt.AddDays(8) : At(day, 17, 10 + _chance.Below(40));
    }

    private void SignOff(Groom groom, PersonId senior, bool isSuitable, DateTimeOffset at)
    {
        // Most often the finish is not there yet and nobody had to step in: the techniques were right all the same.
        var wasSteppedIn = !isSuitable && _chance.Below(10) < 3;
        var criteria = isSuitable ? Criteria.AllMet : Criteria.AllMet with { Finish = Mark.NotYet };
        var level =
            wasSteppedIn ? SupportLevel.TalkedThrough
            : _chance.Below(3) == 0 ? SupportLevel.NotNeeded
            : SupportLevel.StoodBy;
        Words says = isSuitable ? Words.None : new("Comb to the skin before the scissors, then look at the outline from behind.");
        var draft = new SignOffDraft(new(NextId()), groom.By, HasWatched: true, level, criteria, [], [], says);
        Keep(draft, groom.Id, senior, at);
    }

    private void Keep(SignOffDraft draft, GroomId groom, PersonId senior, DateTimeOffset at)
    {
        var team = TeamOn(SalonDay.Of(at, _zone));
        var story = _floor.Story(groom);
        var signer = new Signer(
            _floor.Book.Find(senior)!,
            team.Of(senior).ToDictionary(standing => standing.Skill, standing => standing.Kind),
            DaysIn: [SalonDay.Of(story.Groom.EndedAt, _zone).AddDays(1)]
        );
        _floor.Tell(SigningOff.Decide(draft, story, signer, new SkillKinds(_floor.Book.Skills), at, _zone), senior, at);
    }

    private int _slips;
    private int _forgotten;
    private int _corrected;
    private int _disputed;
    private bool _stopped;
    private bool _nearMiss;

    private void Trouble(CastMember member, Groom groom, PersonId senior, DateOnly day, DateTimeOffset signedAt)
    {
        if (DaysAgo(day) <= 30 && _corrected++ == 0)
            _ahead.Add((signedAt.AddDays(1), () => Correct(groom, senior, signedAt.AddDays(1))));
        if (
            member == DemoCast.Perpetua && DaysAgo(day) <= 16 && _disputed == 0
            || member == DemoCast.Robin && DaysAgo(day) <= 4 && _disputed == 1
        )
            Dispute(groom, signedAt.AddHours(2), isAnswered: _disputed++ == 0);
        if (
            member == DemoCast.Idris
            && DaysAgo(day) <= 24
            && !_stopped
            && groom.Watcher is null
            && groom.Coat != SkillBook.Smooth
        )
            Hurt(groom, signedAt.AddHours(1));
        if (member == DemoCast.Perpetua && DaysAgo(day) <= 9 && !_nearMiss)
            NearMiss(groom, groom.EndedAt.AddMinutes(10));
    }

    private void Correct(Groom groom, PersonId senior, DateTimeOffset at)
    {
        var first = _floor.Story(groom.Id).SignOffOf(groom.By)!;
        var draft = new SignOffDraft(
            new(NextId()),
            groom.By,
            HasWatched: true,
            SupportLevel.TalkedThrough,
            Criteria.AllMet with
            {
                Preparation = Mark.NotYet,
            },
            [],
            [],
            new("Brush out before the bath: two mats were left behind the ears."),
            first.Id,
            new("I had mixed up two dogs of that morning.")
        );
        Keep(draft, groom.Id, senior, at);
    }

    private void Dispute(Groom groom, DateTimeOffset at, bool isAnswered)
    {
        if (at.AddDays(isAnswered ? 2 : 0) > _now)
            return;
        _ahead.Add(
            (
                at,
                () =>
                {
                    var signed = _floor.Story(groom.Id).SignOffOf(groom.By)!;
                    _floor.Tell(
                        Disputing.Dispute(
                            signed,
                            isDisputed: false,
                            _floor.Book.Find(groom.By)!,
                            new("The dog came with that tangle; it is in my log.")
                        ),
                        groom.By,
                        at
                    );
                    if (isAnswered)
                        _ahead.Add((at.AddDays(2), () => Answer(signed, at.AddDays(2))));
                }
            )
        );
    }

    private void Answer(SignOff signed, DateTimeOffset at) =>
        _floor.Tell(
            Disputing.Answer(
                signed,
                isAnswered: false,
                Owner,
                overturn: false,
                new("I looked at the dog with both of you: the judgement stands, and the tangle is noted.")
            ),
            DemoCast.Owner.Id,
            at
        );

    private void Hurt(Groom groom, DateTimeOffset at)
    {
        _stopped = true;
        var draft = new IncidentDraft(
            new(NextId()),
            groom.By,
            at,
            IncidentKind.SkinOpened,
            Severity.Moderate,
            BodySite.FlankOrArmpit,
            [],
            VetContact.Seen,
            new("A fold at the flank was caught; about a centimetre, through the skin."),
            new("Pressed with gauze, vet phoned and seen within the hour, owner told at once.")
        );
        _ahead.Add(
            (
                at,
                () =>
                    _floor.Tell(Reporting.Report(draft, groom, _floor.Book.Find(groom.By)!, _floor.Book.House, at), groom.By, at)
            )
        );
        _ahead.Add((at.AddDays(3), () => Review(groom, draft.Id, at.AddDays(3))));
    }

    private void Review(Groom groom, IncidentId incident, DateTimeOffset at)
    {
        var story = _floor.Story(groom.Id).Incidents.First(one => one.Incident.Id == incident);
        _floor.Tell(
            Reporting.Review(
                story,
                Owner,
                groom.By,
                isTechnique: true,
                new("Skin was not stretched before the pass. We practise it again together, from the start."),
                at
            ),
            DemoCast.Owner.Id,
            at
        );
    }

    private void NearMiss(Groom groom, DateTimeOffset at)
    {
        _nearMiss = true;
        var draft = new IncidentDraft(
            new(NextId()),
            groom.By,
            at,
            IncidentKind.FallOrHanging,
            Severity.NearMiss,
            BodySite.None,
            [],
            VetContact.NotNeeded,
            new("The dog stepped back to the table's edge; my hand was on it."),
            new("Moved the table to the wall.")
        );
        _floor.Tell(Reporting.Report(draft, groom, _floor.Book.Find(groom.By)!, _floor.Book.House, at), groom.By, at);
    }

    private void Decide(DateOnly day)
    {
        var at = At(day, 18, 15);
        var team = _floor.Team(at);
        foreach (var member in DemoCast.Juniors.Where(member => _floor.Book.Find(member.Id)?.WorksOn(day) == true))
        {
            var ready = team.Of(member.Id)
                .Where(standing => standing.Kind == StandingKind.Ready && !IsLeftOpen(member, standing.Skill))
                .ToArray();
            if (ready.Length > 0)
                Clear(member, ready, at, against: false, Words.None);
        }
        if (DaysAgo(day) is > 21 and <= 28 && team[DemoCast.Idris.Id, SkillBook.Elderly] is { Kind: StandingKind.Learning } old)
            Clear(
                DemoCast.Idris,
                [old],
                at,
                against: true,
                new("I have stood beside him with every old dog since summer; too few breeds came in to fill the rule.")
            );
    }

    // Ready and not decided: for whoever tries the demo.
    private static bool IsLeftOpen(CastMember member, SkillCode skill) =>
        member == DemoCast.Perpetua && (skill == SkillBook.Double || skill == SkillBook.HeatProne)
        || member == DemoCast.Tamsin && skill == SkillBook.Nervous;

    private void Clear(CastMember member, Standing[] standings, DateTimeOffset at, bool against, Words reason) =>
        _floor.Tell(
            Clearing.Clear(
                new(NextId()),
                standings
                    .Select(standing => new ClearanceAsked(new(NextId()), standing, LimitsOf(member, standing.Skill)))
                    .ToListed(),
                _floor.Book.Find(member.Id)!,
                Owner,
                against,
                reason,
                at,
                _zone
            ),
            DemoCast.Owner.Id,
            at
        );

    private Limits LimitsOf(CastMember member, SkillCode skill) =>
        (member, skill) switch
        {
            _ when member == DemoCast.Tamsin && skill == SkillBook.Wool => new Limits(NotOnHotDays: true),
            _ when member == DemoCast.Tamsin && skill == SkillBook.Double => new Limits(UpToKg: 40),
            _ when member == DemoCast.Idris && (skill == SkillBook.Wool || skill == SkillBook.Smooth) => new Limits(
                Until: _today.AddDays(40)
            ),
            _ when member == DemoCast.Idris && (skill == SkillBook.Combination || skill == SkillBook.Ears) => new Limits(
                OnlyWithSeniorIn: true
            ),
            _ => Limits.None,
        };
}
