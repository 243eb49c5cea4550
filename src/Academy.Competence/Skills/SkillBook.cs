namespace Academy.Competence.Skills;

/// <summary>The skills every salon starts with: eight coats, the techniques and the hazards.</summary>
/// <remarks>
/// Wire, wool, smooth, double, silky and combination are the coats that the English apprenticeship standard ST0943 names;
/// hairless and corded are additions of the trade. Techniques and hazards are common practice, no published source.
/// </remarks>
public static class SkillBook
{
    /// <summary>Short, close coat that sheds.</summary>
    public static readonly SkillCode Smooth = new("smooth");

    /// <summary>Guard hair over dense undercoat.</summary>
    public static readonly SkillCode Double = new("double");

    /// <summary>Harsh guard hair that stays until it is pulled.</summary>
    public static readonly SkillCode Wire = new("wire");

    /// <summary>Fine, long, dropping coat.</summary>
    public static readonly SkillCode Silky = new("silky");

    /// <summary>Curly coat that keeps growing.</summary>
    public static readonly SkillCode Wool = new("wool");

    /// <summary>Smooth body with feathering.</summary>
    public static readonly SkillCode Combination = new("combination");

    /// <summary>Little or no hair.</summary>
    public static readonly SkillCode Hairless = new("hairless");

    /// <summary>Undercoat felted into cords.</summary>
    public static readonly SkillCode Corded = new("corded");

    /// <summary>Bathing.</summary>
    public static readonly SkillCode Bath = new("bath");

    /// <summary>Drying by hand: towel, stand dryer or forced air, never enclosed.</summary>
    public static readonly SkillCode HandDrying = new("hand-drying");

    /// <summary>Brushing and combing through.</summary>
    public static readonly SkillCode Brushing = new("brushing");

    /// <summary>Nails.</summary>
    public static readonly SkillCode Nails = new("nails");

    /// <summary>Pads and feet.</summary>
    public static readonly SkillCode PadsAndFeet = new("pads-and-feet");

    /// <summary>Ears.</summary>
    public static readonly SkillCode Ears = new("ears");

    /// <summary>De-shedding.</summary>
    public static readonly SkillCode DeShedding = new("de-shedding");

    /// <summary>Scissoring legs and body.</summary>
    public static readonly SkillCode BodyScissoring = new("body-scissoring");

    /// <summary>Hand-stripping.</summary>
    public static readonly SkillCode HandStripping = new("hand-stripping");

    /// <summary>De-matting.</summary>
    public static readonly SkillCode DeMatting = new("de-matting");

    /// <summary>Scissoring round the face.</summary>
    public static readonly SkillCode FaceScissoring = new("face-scissoring");

    /// <summary>The strip under the dog, by consent; its benefit is unproven.</summary>
    public static readonly SkillCode CoolingClip = new("cooling-clip");

    /// <summary>Drying in a cabinet: off until the owner turns it on.</summary>
    public static readonly SkillCode CabinetDrying = new("cabinet-drying");

    /// <summary>A flat face.</summary>
    public static readonly SkillCode FlatFaced = new("flat-faced");

    /// <summary>Old: follows from the day of birth.</summary>
    public static readonly SkillCode Elderly = new("elderly");

    /// <summary>Very young: follows from the day of birth.</summary>
    public static readonly SkillCode VeryYoung = new("very-young");

    /// <summary>A heart condition.</summary>
    public static readonly SkillCode Heart = new("heart");

    /// <summary>Seizures.</summary>
    public static readonly SkillCode Seizures = new("seizures");

    /// <summary>A heavy coat.</summary>
    public static readonly SkillCode HeavyCoat = new("heavy-coat");

    /// <summary>Overweight.</summary>
    public static readonly SkillCode Overweight = new("overweight");

    /// <summary>50 kg or more: follows from the weight.</summary>
    public static readonly SkillCode FiftyKilos = new("fifty-kilos");

    /// <summary>One of the nine breeds with raised odds of heat illness.</summary>
    public static readonly SkillCode HeatProne = new("heat-prone");

    /// <summary>Nervous.</summary>
    public static readonly SkillCode Nervous = new("nervous");

    /// <summary>Has bitten.</summary>
    public static readonly SkillCode BiteHistory = new("bite-history");

    /// <summary>Groomed with a muzzle.</summary>
    public static readonly SkillCode Muzzled = new("muzzled");

    /// <summary>Matted.</summary>
    public static readonly SkillCode Matted = new("matted");

    /// <summary>The day's own hazard.</summary>
    public static readonly SkillCode HotDay = new("hot-day");

    private static readonly ModuleName HeatStroke = new("heat-stroke");
    private static readonly ModuleName MuzzleBreaks = new("muzzle-breaks");
    private static readonly ModuleName Blades = new("blades-and-scissors");
    private static readonly ModuleName CoolingClips = new("cooling-clips");

    /// <summary>The skills of a new salon in the order in which a board shows them.</summary>
    public static readonly Listed<Skill> Defaults =
    [
        Coat(Smooth, "smooth"),
        Coat(Double, "double"),
        Coat(Wire, "wire"),
        Coat(Silky, "silky"),
        Coat(Wool, "wool"),
        Coat(Combination, "combination"),
        Coat(Hairless, "hairless"),
        Coat(Corded, "corded"),
        Technique(Bath, "bath"),
        Technique(HandDrying, "drying by hand"),
        Technique(Brushing, "brushing"),
        Technique(Nails, "nails"),
        Technique(PadsAndFeet, "pads and feet", Blades),
        Technique(Ears, "ears"),
        Technique(DeShedding, "de-shedding"),
        Technique(BodyScissoring, "scissoring legs and body", Blades),
        Technique(HandStripping, "hand-stripping"),
        Technique(DeMatting, "de-matting", Blades),
        Technique(FaceScissoring, "scissoring round the face", Blades),
        Technique(CoolingClip, "cooling clip", CoolingClips),
        Technique(CabinetDrying, "cabinet drying", HeatStroke),
        Hazard(FlatFaced, "flat-faced", HeatStroke),
        Hazard(Elderly, "elderly", HeatStroke),
        Hazard(VeryYoung, "very young"),
        Hazard(Heart, "heart condition", HeatStroke),
        Hazard(Seizures, "seizures"),
        Hazard(HeavyCoat, "heavy coat", HeatStroke),
        Hazard(Overweight, "overweight", HeatStroke),
        Hazard(FiftyKilos, "50 kg or more", HeatStroke),
        Hazard(HeatProne, "heat-prone breed", HeatStroke),
        Hazard(Nervous, "nervous"),
        Hazard(BiteHistory, "bite history", MuzzleBreaks),
        Hazard(Muzzled, "muzzled", MuzzleBreaks),
        Hazard(Matted, "matted", Blades),
        Hazard(HotDay, "hot day", HeatStroke),
    ];

    /// <summary>The hazards of a dog at risk in heat: a lower limit holds for it.</summary>
    public static readonly Listed<SkillCode> AtRiskInHeat =
    [
        FlatFaced,
        Elderly,
        Heart,
        HeavyCoat,
        Overweight,
        FiftyKilos,
        HeatProne,
    ];

    private static Skill Coat(SkillCode code, string name) => new(code, SkillKind.Coat, name, [Blades]);

    private static Skill Technique(SkillCode code, string name, params ReadOnlySpan<ModuleName> modules) =>
        new(code, SkillKind.Technique, name, Listed.Of(modules));

    private static Skill Hazard(SkillCode code, string name, params ReadOnlySpan<ModuleName> modules) =>
        new(code, SkillKind.Hazard, name, Listed.Of(modules));
}
