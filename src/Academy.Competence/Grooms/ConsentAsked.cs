using Academy.Competence.Skills;

namespace Academy.Competence.Grooms;

/// <summary>Which consents of the dog's owner a groom may need, and what makes it so.</summary>
/// <param name="Consent">The consent.</param>
/// <param name="Conditions">It applies to a coat found like this.</param>
/// <param name="Skills">It applies where one of these is the coat, a technique or a hazard of the groom.</param>
/// <param name="Checks">It applies once one of these was noted.</param>
/// <remarks>Common practice, no published source.</remarks>
public sealed record ConsentAsked(
    Consent Consent,
    Listed<CoatCondition> Conditions,
    Listed<SkillCode> Skills,
    Listed<WelfareCheck> Checks
)
{
    /// <summary>All of them, in the order of the form.</summary>
    public static readonly Listed<ConsentAsked> All =
    [
        new(Consent.ClipOff, [CoatCondition.Mats, CoatCondition.Pelted], [SkillBook.Matted], []),
        new(Consent.DoubleCoatClip, [], [SkillBook.Double], []),
        new(Consent.CoolingClip, [], [SkillBook.CoolingClip], []),
        new(Consent.Muzzle, [], [SkillBook.Muzzled], [WelfareCheck.MuzzleOn]),
        new(Consent.OldOrIll, [], [SkillBook.Elderly, SkillBook.Heart, SkillBook.Seizures], []),
    ];

    /// <summary>Whether this groom may need it.</summary>
    public bool AppliesTo(Groom groom) =>
        Conditions.Contains(groom.Condition)
        || Skills.Any(skill =>
            groom.Coats.Contains(skill) || groom.Hazards.Contains(skill) || groom.Parts.Any(part => part.Technique == skill)
        )
        || groom.Checks.Any(made => Checks.Contains(made.Check));
}
