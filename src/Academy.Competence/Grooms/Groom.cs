using Academy.Competence.Skills;

namespace Academy.Competence.Grooms;

/// <summary>The state of the coat on arrival.</summary>
public enum CoatCondition
{
    /// <summary>A comb goes through to the skin.</summary>
    CombedThrough,

    /// <summary>Some tangles.</summary>
    SomeTangles,

    /// <summary>Mats.</summary>
    Mats,

    /// <summary>Felted to the skin.</summary>
    Pelted,
}

/// <summary>Who did which technique.</summary>
/// <param name="Technique">The technique.</param>
/// <param name="Doer">Whoever did it.</param>
public sealed record Part(SkillCode Technique, PersonId Doer);

/// <summary>What the dog's owner agreed to, in writing.</summary>
public enum Consent
{
    /// <summary>A matted coat is clipped off.</summary>
    ClipOff,

    /// <summary>A double coat is clipped: it may not grow back as it was.</summary>
    DoubleCoatClip,

    /// <summary>A cooling clip.</summary>
    CoolingClip,

    /// <summary>A muzzle.</summary>
    Muzzle,

    /// <summary>An old or ill dog is groomed.</summary>
    OldOrIll,
}

/// <summary>A welfare check that was made.</summary>
public enum WelfareCheck
{
    /// <summary>Paws and pads looked at on arrival.</summary>
    ArrivalPads,

    /// <summary>Water offered before the bath.</summary>
    WaterBeforeBath,

    /// <summary>Water offered after the bath.</summary>
    WaterAfterBath,

    /// <summary>Water offered after the groom.</summary>
    WaterAfterGroom,

    /// <summary>Muzzle on.</summary>
    MuzzleOn,

    /// <summary>Muzzle off for a panting break.</summary>
    MuzzleBreak,

    /// <summary>Muzzle off.</summary>
    MuzzleOff,
}

/// <summary>A welfare check and its moment.</summary>
public sealed record CheckMade(WelfareCheck Check, DateTimeOffset At);

/// <summary>A sign somebody saw on the dog.</summary>
public enum Sign
{
    /// <summary>Panting.</summary>
    Panting,

    /// <summary>Trembling.</summary>
    Trembling,

    /// <summary>Licking lips, yawning, showing the white of the eye.</summary>
    LipLicking,

    /// <summary>Red or sore skin.</summary>
    RedSkin,

    /// <summary>A limp, or sore pads.</summary>
    Limp,

    /// <summary>Sore eyes or ears.</summary>
    SoreEyesOrEars,

    /// <summary>A lump or a wound it came with.</summary>
    LumpOrWound,

    /// <summary>Loud or laboured breathing at rest: stop, and phone the vet.</summary>
    LaboredBreathing,

    /// <summary>Vomiting or loose stool.</summary>
    VomitingOrLooseStool,
}

/// <summary>Temperature and relative humidity at one moment in one room.</summary>
/// <param name="At">When it was read.</param>
/// <param name="TenthsC">Temperature in tenths of a degree Celsius.</param>
/// <param name="HumidityPct">Relative humidity in whole percent; null where only a thermometer hangs.</param>
public sealed record RoomReading(DateTimeOffset At, int TenthsC, int? HumidityPct);

/// <summary>One dog, one visit, as last told by whoever logged it.</summary>
/// <param name="Id">Made once, on the device.</param>
/// <param name="Dog">The dog.</param>
/// <param name="By">Whoever logged it and did it or most of it.</param>
/// <param name="Watcher">The senior named as watching; null where it was done alone.</param>
/// <param name="StartedAt">Arrival on the table.</param>
/// <param name="EndedAt">The end.</param>
/// <param name="Breed">The dog's breed at that time, for breadth.</param>
/// <param name="Coat">The coat on the dog in front of them.</param>
/// <param name="SecondCoat">A second coat.</param>
/// <param name="Condition">Its state on arrival.</param>
/// <param name="WholeFinishBy">Whoever did the whole finish, of both coats where there are two; null where it was shared or not done: the coat then counts for nobody.</param>
/// <param name="Parts">Each technique with its doer.</param>
/// <param name="Blades">Blades and combs used, by their number.</param>
/// <param name="Hazards">Hazards met: the dog's as they were, and the day's.</param>
/// <param name="Consents">What the owner of the dog agreed to.</param>
/// <param name="Checks">Welfare checks with their times, in order.</param>
/// <param name="Signs">Signs seen.</param>
/// <param name="Room">The reading taken for it, if any.</param>
/// <param name="EndedEarly">Whether it was broken off: often the right thing.</param>
/// <param name="Phrases">Codes of quick phrases tapped.</param>
/// <param name="Notes">Words.</param>
public sealed record Groom(
    GroomId Id,
    DogId Dog,
    PersonId By,
    PersonId? Watcher,
    DateTimeOffset StartedAt,
    DateTimeOffset EndedAt,
    string Breed,
    SkillCode Coat,
    SkillCode? SecondCoat,
    CoatCondition Condition,
    PersonId? WholeFinishBy,
    Listed<Part> Parts,
    Listed<string> Blades,
    Listed<SkillCode> Hazards,
    Listed<Consent> Consents,
    Listed<CheckMade> Checks,
    Listed<Sign> Signs,
    RoomReading? Room,
    bool EndedEarly,
    Listed<string> Phrases,
    Words Notes
)
{
    /// <summary>The coat or both coats.</summary>
    public IEnumerable<SkillCode> Coats => SecondCoat is { } second ? [Coat, second] : [Coat];

    /// <summary>Everybody who did a part: the logger, whoever did a technique, whoever did the finish.</summary>
    public IEnumerable<PersonId> Doers =>
        Parts.Select(part => part.Doer).Append(By).Concat(WholeFinishBy is { } whole ? [whole] : []).Distinct();

    /// <summary>
    /// The skills that this groom is about for one person: the coats if she did the whole finish, the techniques she did, and the
    /// hazards present if she did the whole finish or every technique.
    /// </summary>
    public IEnumerable<SkillCode> SkillsOf(PersonId person)
    {
        var coats = WholeFinishBy == person ? Coats : [];
        var techniques = Parts.Where(part => part.Doer == person).Select(part => part.Technique);
        var wasHers = WholeFinishBy == person || (!Parts.IsEmpty && Parts.All(part => part.Doer == person));
        return coats.Concat(techniques).Concat(wasHers ? Hazards : []).Distinct();
    }

    /// <summary>Whether a muzzle was worn.</summary>
    public bool WasMuzzled => Checks.Any(made => made.Check == WelfareCheck.MuzzleOn) || Hazards.Contains(SkillBook.Muzzled);
}
