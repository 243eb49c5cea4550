using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Skills;

namespace Academy.Web.Demo;

/// <summary>What is done to a dog, with which blades, and which checks are made meanwhile.</summary>
internal sealed class DemoWork(DemoStory story, DemoSigning signing)
{
    public Listed<SkillCode> TechniquesFor(Dog dog, CastMember member)
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
            .. story.Chance.Below(3) > 0 ? [SkillBook.Nails] : (SkillCode[])[],
        ];
        SkillCode[] then = story.Chance.Below(4) switch
        {
            0 => [SkillBook.Ears],
            1 when member.Role != Role.Junior || signing.Practised(member, dog.Coat!.Value) > 10 => [SkillBook.FaceScissoring],
            2 when member.Role != Role.Junior => [SkillBook.DeMatting],
            _ => [],
        };
        return now.Concat(byCoat).Concat(then).Distinct().ToListed();
    }

    public static Listed<string> BladesFor(Listed<SkillCode> techniques) =>
        techniques.Contains(SkillBook.PadsAndFeet) ? ["10"]
        : techniques.Contains(SkillBook.BodyScissoring) ? ["7F"]
        : [];

    public static Listed<CheckMade> ChecksFor(DateTimeOffset started, DateTimeOffset ended, Listed<SkillCode> hazards)
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
}
