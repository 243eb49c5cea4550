using Academy.Competence.Grooms;
using Academy.Competence.Skills;

namespace Academy.Competence.Tests.Grooms;

// Common practice, no published source.
public class ConsentAskedTests
{
    private static readonly DateTimeOffset Nine = new(2026, 7, 14, 9, 0, 0, TimeSpan.Zero);

    private static readonly Groom Plain = new(
        new(new Guid(1, 0, 0, new byte[8])),
        new(new Guid(2, 0, 0, new byte[8])),
        By: new(new Guid(3, 0, 0, new byte[8])),
        Watcher: null,
        Nine,
        Nine.AddHours(1),
        "Poodle (Toy)",
        SkillBook.Wool,
        SecondCoat: null,
        CoatCondition.CombedThrough,
        WholeFinishBy: null,
        Parts: [],
        Blades: [],
        Hazards: [],
        Consents: [],
        Checks: [],
        Signs: [],
        Room: null,
        EndedEarly: false,
        Phrases: [],
        Words.None
    );

    [Fact]
    public void A_plain_groom_asks_for_none() => Assert.Empty(Asked(Plain));

    [Fact]
    public void Mats_and_pelted_coats_ask_for_the_clip_off()
    {
        Assert.Equal([Consent.ClipOff], Asked(Plain with { Condition = CoatCondition.Mats }));
        Assert.Equal([Consent.ClipOff], Asked(Plain with { Condition = CoatCondition.Pelted }));
        Assert.Equal([Consent.ClipOff], Asked(Plain with { Hazards = [SkillBook.Matted] }));
    }

    [Fact]
    public void A_double_coat_asks_also_as_the_second_coat() =>
        Assert.Equal([Consent.DoubleCoatClip], Asked(Plain with { SecondCoat = SkillBook.Double }));

    [Fact]
    public void A_cooling_clip_asks_for_its_own() =>
        Assert.Equal([Consent.CoolingClip], Asked(Plain with { Parts = [new(SkillBook.CoolingClip, Plain.By)] }));

    [Fact]
    public void A_muzzle_asks_whether_it_was_planned_or_put_on() =>
        Assert.Equal(
            [Consent.Muzzle],
            Asked(Plain with { Hazards = [SkillBook.Muzzled] })
                .Union(Asked(Plain with { Checks = [new(WelfareCheck.MuzzleOn, Nine)] }))
        );

    [Fact]
    public void An_old_dog_with_a_heart_condition_asks_once() =>
        Assert.Equal([Consent.OldOrIll], Asked(Plain with { Hazards = [SkillBook.Elderly, SkillBook.Heart] }));

    [Fact]
    public void Every_consent_has_its_rule() =>
        Assert.Equal(Enum.GetValues<Consent>(), ConsentAsked.All.Select(asked => asked.Consent));

    private static IEnumerable<Consent> Asked(Groom groom) =>
        ConsentAsked.All.Where(asked => asked.AppliesTo(groom)).Select(asked => asked.Consent);
}
