using System.Diagnostics;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.SignOffs;
using Academy.Competence.Standings;
using Academy.Competence.Thresholds;

namespace Academy.Web.Wording;

/// <summary>The one place of words in the portal: rules, standings and reasons as plain sentences.</summary>
public static partial class Say
{
    /// <summary>Every reason as a sentence, each sentence once, in their order.</summary>
    public static IReadOnlyList<string> Reasons(IEnumerable<Reason> reasons, Names names) =>
        [.. reasons.Select(reason => Reason(reason, names)).Distinct(StringComparer.Ordinal)];

    /// <summary>A reason as a sentence with its numbers: what is missing, and what would change it.</summary>
    public static string Reason(Reason reason, Names names) =>
        reason switch
        {
            Gap gap => OfGap(gap, names),

            NotWorkingHere away => $"{Capital(names.Of(away.Person))} does not work here on that day.",
            OwnerOnly => "Only the owner may do this.",
            OwnerOrDeputyOnly => "Only the owner or a deputy may do this.",
            SeniorOrOwnerOnly only => $"Only a senior or the owner may do this; the role here is {Word(only.Role)}.",
            OwnWork => "Nobody judges their own work: another senior or the owner does.",
            WordsNeeded words => Word(words.For),
            LastOwner => "The salon needs an owner: make somebody else owner first.",
            HereAlready => "This person works here already.",
            BeforeJoining joining =>
                $"That day lies before the first day here, {names.Time.Date(joining.JoinedOn)}: write that day or a later one.",

            MayNotWriteModules =>
                "Only the owner, or a senior whom the owner lets, writes and reads modules before they are published.",
            SecondReaderNeeded needed =>
                $"Somebody else reads it first: {string.Join(" or ", needed.Could.Select(names.Of))} could. Ask for it to be read.",
            ReviewsOwnModule => "Whoever wrote a module does not read it for somebody else too: another person does.",
            NotTheNextEdition not =>
                $"This is edition {not.Edition}, and the next one here is {not.Next}: write edition: {not.Next}.",
            CatchUpDayNeeded needed =>
                $"Choose by which day everybody catches up: from {names.Time.Date(needed.First)} to {names.Time.Date(needed.Last)}.",
            TooManyWords many => $"That is {many.Letters} characters; {many.Most} are the most. Say it shorter.",
            NotHerNote => "Only whoever wrote a note, or the owner, takes it back.",
            QuestionsNotJudged left => left.Count == 1
                ? "One question has no chance yet: choose one from 0 to 100."
                : $"{left.Count} questions have no chance yet: choose one from 0 to 100 for each.",
            ModuleToPutRight to => to.Findings == 1
                ? "One thing in it has to be put right first: it is listed with its line."
                : $"{to.Findings} things in it have to be put right first: they are listed with their lines.",

            LevelNotChosen => "Choose how much the senior was needed, 1 to 5.",
            CriterionNotSet unset => $"{Capital(Word(unset.Criterion))}: choose met, not yet or not seen.",
            SignerAloneInNone => "Whoever signs must be alone in at least one skill of this groom: ask a senior who is.",
            SignerDidNotWatch => "Say that you watched this groom; for one done alone, that you inspected the finished dog.",
            GroomNotEnded => "This groom has not ended yet: sign it off after its end.",
            AlreadySignedOff => "This groom is signed off already: correct that sign-off instead.",
            NotTheSignOffInForce => "That sign-off has been corrected meanwhile: correct the one in force.",
            DidNoPart none => $"{Capital(names.Of(none.Person))} did no part of this groom.",
            SignerNotAloneIn not =>
                $"{Skill(not.Skill, names)}: not counted, because whoever signs is not alone in it but {Word(not.Standing)}.",
            NotHerSignOff => "Only the person whose groom was judged may dispute this sign-off.",
            DisputedAlready => "This sign-off is disputed already: the owner's answer comes first.",
            NothingToSpeakAbout =>
                "There is nothing open to speak about: this groom is not flagged, or was spoken about already.",
            NotDisputed => "Nobody disputed this sign-off: there is nothing to answer.",
            NotHerStanding other => $"{Skill(other.Skill, names)}: this is another person's standing, so nothing was decided.",
            NothingToErase => "There is nothing to erase here: the entry holds no free words, or they are erased already.",
            AnsweredAlready => "This dispute is answered already: the answer stays as it is.",
            WasNotLate => "This sign-off was on time, or counts already: there is nothing to let count.",

            InTheFuture future =>
                $"{names.Time.At(future.At)} lies in the future: write when it was, and look at the clock of this device.",
            EndsBeforeItStarts => "The groom ends before it starts: correct one of the two times.",
            LongerThanADay => "The groom lasts longer than a day: correct its start or its end.",
            NoCoatChosen => "No coat is chosen: choose the coat on the dog in front of you.",
            NoWorkAgreed => "No work is agreed: say what is to be done.",
            WatchedByHerself => "Nobody watches their own groom: name another senior, or nobody.",
            SignedOffAlready => "This groom is signed off already: it can be disputed or reported on, no longer changed.",
            NotHerGroom => "Only the person who logged this groom may change it.",
            MuzzleNeverOff => "The muzzle went on and never came off: write when it came off.",

            NotReady not => $"{Skill(not.Skill, names)}: {Small(OfGap(not.Gap, names))}",
            ReviewComesFirst first => $"{Skill(first.Skill, names)}: an incident waits for its review, and that comes first.",
            AloneAlready already => $"{Skill(already.Skill, names)}: alone already, so there is nothing to decide.",
            LimitInThePast past => $"{Capital(names.Time.Date(past.Until))} is past: write today or a later day as the last one.",
            NothingChosen => "Nothing is chosen: choose at least one skill.",
            NothingToStop nothing => $"{Skill(nothing.Skill, names)}: there is no clearance to stop.",
            NotStoodDown not => $"{Skill(not.Skill, names)}: not stood down, so there is nothing to lift.",
            TechniqueContributed technique =>
                $"{Skill(technique.Skill, names)}: technique contributed to the incident, so only the whole row and a new decision end this stop.",
            ReviewedAlready => "This incident is reviewed already: the review stays as it is.",
            DeclaredAlready declared =>
                $"{Skill(declared.Skill, names)}: a declaration begins a path, and this person has one already.",

            SkillCodeTaken taken => $"The code “{taken.Skill}” is taken by a skill of another kind: choose another code.",
            FromDayPast past =>
                $"{Capital(names.Time.Date(past.FromDay))} is past: a threshold holds from today or from a later day.",
            ReadingNotPlausible => "No room is like that: write -10 to 60 °C, and 0 to 100 % humidity.",
            BirthdayNotPlausible born =>
                $"{names.Time.Date(born.BornOn)} cannot be a dog's birthday: write a day within the last 30 years.",
            WeightNotPlausible weight => $"{weight.WeightKg} kg cannot be a dog's weight: write 1 to 120 kg.",
            SameCoatTwice same => $"Both coats are {names.Of(same.Coat)}: choose another second coat, or none.",
            TakeAgainLater later => $"This quiz may be taken again from {names.Time.At(later.At)} on.",
            NotTheEditionDrawn drawn =>
                $"{names.Of(drawn.Module)} has another edition than the one this quiz was drawn from: begin a new quiz.",

            NotAloneIn not => OfNotAlone(not, names),
            NotOnHotDays hot => $"{Skill(hot.Skill, names)}: not on hot days, and this is one.",
            TooHeavy heavy => $"{Skill(heavy.Skill, names)}: up to {heavy.UpToKg} kg, and this dog weighs {heavy.WeightKg} kg.",
            WeightUnknown unknown =>
                $"{Skill(unknown.Skill, names)}: up to {unknown.UpToKg} kg, and this dog's weight is not known: weigh it.",
            NoSeniorIn none => $"{Skill(none.Skill, names)}: only with another senior in the building, and none is ticked in.",
            Watched watched => $"{Skill(watched.Skill, names)}: {NextOnes(watched.Yet)}.",
            NotInToday => "Not ticked in today.",
            NotUntilReviewed not =>
                $"{Skill(not.Skill, names)}: an incident waits for the owner's review; until then not this dog, not even with somebody beside.",
            NobodyToStandBeside => "Nobody who is in today could stand beside: none of them is alone in what is missing.",
            UnknownSkill unknown => $"The salon has no skill “{unknown.Skill}”: the owner adds it, or it comes off this dog.",
            AgeUnknown =>
                "The dog's age is not known, and an old or very young dog asks for more: write its birthday, or how old it looks.",

            ReadingNeeded { NewestAt: { } at } =>
                $"The newest room reading is from {names.Time.At(at)}, {names.Time.Ago(at)}: take a new one.",
            ReadingNeeded => "There is no room reading: take one.",
            AtTheStopLine { IsAtRisk: true } stop =>
                $"{Counts.Celsius(stop.TenthsC)} in the room: from {Counts.Celsius(stop.FromTenthsC)} nobody grooms a dog at risk in heat. Re-book.",
            AtTheStopLine stop =>
                $"{Counts.Celsius(stop.TenthsC)} in the room: from {Counts.Celsius(stop.FromTenthsC)} nobody grooms. Re-book.",
            HotForThisDog { IsAtRisk: true } hot =>
                $"{Counts.Celsius(hot.TenthsC)} is a hot day for this dog, which is at risk in heat: {HotWords}",
            HotForThisDog hot => $"{Counts.Celsius(hot.TenthsC)} is a hot day: {HotWords}",
            NeverEnclosedDrying never => $"{Skill(never.Hazard, names)}: never in a closed dryer, whoever grooms. Dry by hand.",
            NeverMuzzled =>
                "No muzzle on a dog with breathing trouble, overheated or likely to vomit: not this dog now. The vet decides where health is in doubt.",
            BreathingTrouble => "Loud or laboured breathing at rest: nobody grooms. Stop and phone the vet.",
            TwoPeopleFor two => $"{Skill(two.Skill, names)}: two people, one of them a senior.",
            TwoPeopleForPeltedFolds => "Pelted coat near skin folds: two people, one of them a senior.",
            LiftTogether { WeightKg: { } kilos } lift =>
                $"{kilos} kg: two lift together; one person alone lifts up to {lift.UpToKg} kg.",
            LiftTogether lift => $"The weight is not known: two lift together; one person alone lifts up to {lift.UpToKg} kg.",
            NeverASleeve => "Flat-faced and muzzled: never a sleeve muzzle.",

            _ => throw new UnreachableException($"No words for {reason.GetType().Name}."),
        };

    private const string HotWords =
        "water at fixed points, moving air, nothing closed. Panting that does not settle means stop, cool the dog and phone the vet.";

    /// <summary>Criteria that wait for their mark, in one sentence.</summary>
    public static string Unset(IReadOnlyCollection<CriterionNotSet> unset) =>
        $"Choose met, not yet or not seen for {(unset.Count == Enum.GetValues<Criterion>().Length ? "all six" : Counts.And([.. unset.Select(one => Word(one.Criterion))]))}.";

    private static string OfGap(Gap gap, Names names) =>
        gap switch
        {
            ModuleLacking module => OfModule(module, names),
            RowNotFull row =>
                $"{Counts.OutOf(row.Have, row.Need)} marks; {Counts.Of(row.Need - row.Have, "more groom that suits", "more grooms that suit")} would fill the row.",
            TooFewBreeds breeds =>
                $"{Counts.OutOf(breeds.Have, breeds.Need)} {(breeds.Need == 1 ? "breed" : "breeds")}, counting those that suited among the last {Threshold.Window} rated grooms; {breeds.Need - breeds.Have} more asked.",
            TooFewSeniors seniors =>
                $"{Counts.OutOf(seniors.Have, seniors.Need)} {(seniors.Need == 1 ? "senior" : "seniors")} with {Threshold.RatingsPerSenior} ratings each in the last {Threshold.Window} rated grooms; {seniors.Need - seniors.Have} more asked.",
            CriticalTooNear critical =>
                $"A critical incident on {names.Time.Date(critical.On)}, {Counts.Of(critical.RatedSince, "rated groom")} since; {Threshold.Window} are asked, or {Threshold.FewerAfterCritical} and {Threshold.DaysAfterCritical} days.",
            ReviewOpen { Incidents: 1 } => "1 incident waits for the owner's review.",
            ReviewOpen review => $"{review.Incidents} incidents wait for the owner's review.",
            TooFewRecentGrooms recent => OfRecency(recent, names),
            DriftedTooFar drift =>
                $"Too many of the inspected grooms needed fixing: on {names.Time.Date(drift.On)} the drift count came to {drift.Alarm}, and {drift.From} asks for a check. Rated grooms with a senior fill the row again.",
            NoCoatAlone => "This comes on top of a coat: first be alone in at least one coat.",
            NotDecided => "The rules hold, and the owner has not decided yet.",
            ClearanceRanOut ran => $"The clearance ran until {names.Time.Date(ran.Until)}: the owner decides again.",
            StoodDownSince { IsTechnique: true } stop =>
                $"Stood down {names.Time.Since(stop.On)}, and technique contributed: the whole row and a new decision end it.",
            StoodDownSince stop => $"Stood down {names.Time.Since(stop.On)}, until the owner or a deputy lifts it.",
            OnTheWayBack back => OfWayBack(back),
            SkillTurnedOff => "The salon has turned this off: nobody may, until the owner turns it on.",
            _ => throw new UnreachableException($"No words for {gap.GetType().Name}."),
        };

    private static string OfModule(ModuleLacking lacking, Names names)
    {
        var module = names.Of(lacking.Module);
        var on = lacking.PassedOn is { } day ? $" on {names.Time.Date(day)}" : "";
        return lacking.State switch
        {
            ModuleState.NotPassed => $"{module} is not passed yet: study it and take its quiz.",
            ModuleState.EditionTooOld =>
                $"{module} was passed{on}, but has had a safety change since: read the new edition and take its quiz.",
            ModuleState.RefresherOverdue => $"{module} was passed{on}, but its refresher is overdue: take it.",
            ModuleState.RefresherFailed =>
                $"{module} was passed{on}, but its refresher was twice not passed: study it and take it again.",
            ModuleState.NotRenewed => $"{module} was passed{on}, but is renewed each spring: take its quiz again.",
            ModuleState.NotInLibrary =>
                $"{module} is not among the salon's modules, so nobody can pass it: the owner adds it or asks for another.",
            _ => throw new UnreachableException($"{lacking.State} is nothing that lacks."),
        };
    }

    private static string OfRecency(TooFewRecentGrooms recent, Names names)
    {
        var count =
            $"{Counts.OutOf(recent.Have, recent.Need)} {(recent.Need == 1 ? "groom" : "grooms")} in the last {recent.WithinDays} days";
        var last = recent.LastOn is { } day
            ? $"the last one {names.Time.Date(day)}, {names.Time.Ago(day)}"
            : "none on record before";
        return $"{count}, {last}; {recent.Need - recent.Have} more asked.";
    }

    private static string OfWayBack(OnTheWayBack back) =>
        back switch
        {
            { Need: 0 } => "Too long without a groom: the owner decides again.",
            { Depth: WayBack.Short } =>
                $"On the way back, {Counts.OutOf(back.Have, back.Need)} marks: it returns by itself once the row is full and the breeds hold.",
            { Depth: WayBack.Long } =>
                $"On the way back, {Counts.OutOf(back.Have, back.Need)} marks: once the rules hold the owner signs again.",
            { Depth: WayBack.Whole } =>
                $"On the way back from the beginning, {Counts.OutOf(back.Have, back.Need)} marks: once the rules hold the owner signs again.",
            _ => throw new UnreachableException($"{back.Depth} is no way back."),
        };

    private static string OfNotAlone(NotAloneIn not, Names names)
    {
        var marks = not is { Have: { } have, Need: { } need } ? $", {Counts.OutOf(have, need)} marks" : "";
        var waits = not.Standing == StandingKind.Ready ? ", but the owner has not decided yet" : "";
        return $"{Skill(not.Skill, names)}: {Word(not.Standing)}{marks}{waits}.";
    }

    private static string NextOnes(int yet) =>
        yet switch
        {
            0 => "a senior stands beside until the drift count has fallen",
            1 => "a senior stands beside for the next groom",
            _ => $"a senior stands beside for the next {yet} grooms",
        };

    private static string Skill(SkillCode skill, Names names) => Capital(names.Of(skill));

    /// <summary>The words with a capital at their head.</summary>
    public static string Capital(string words) =>
        words.Length == 0 ? words : char.ToUpper(words[0], SalonTime.Culture) + words[1..];

    private static string Small(string words) => char.ToLower(words[0], SalonTime.Culture) + words[1..];
}
