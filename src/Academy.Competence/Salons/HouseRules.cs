namespace Academy.Competence.Salons;

/// <summary>The salon's own numbers for age, heat, lifting and young workers. Temperatures are in tenths of a degree Celsius.</summary>
/// <remarks>
/// Common practice, no published threshold for salons: the salon owns every number here and may change it. The heat index
/// is made for people and is a trigger for checks, never a promise of safety. A number that can mean nothing (month 13, a dog
/// elderly at 0) is refused when it is set.
/// </remarks>
public sealed record HouseRules
{
    /// <summary>From this age in whole years a dog is elderly; 8 by default.</summary>
    public int ElderlyFromYears
    {
        get;
        init => field = Between(value, 1, 30);
    } = 8;

    /// <summary>Up to this age in whole weeks a dog is very young; 16 by default.</summary>
    public int VeryYoungUntilWeeks
    {
        get;
        init => field = Between(value, 0, 104);
    } = 16;

    /// <summary>Hot day from this room temperature; 26.0 °C by default.</summary>
    public int HotFromTenthsC
    {
        get;
        init => field = Between(value, -100, 600);
    } = 260;

    /// <summary>Hot day from this heat index in whole degrees Fahrenheit; 80 °F by default.</summary>
    public int HotFromIndexF
    {
        get;
        init => field = Between(value, 0, 200);
    } = 80;

    /// <summary>Hot day for dogs at risk in heat; 24.0 °C by default.</summary>
    public int HotForAtRiskFromTenthsC
    {
        get;
        init => field = Between(value, -100, 600);
    } = 240;

    /// <summary>Stop line: nobody grooms, re-book; 30.0 °C by default.</summary>
    public int StopFromTenthsC
    {
        get;
        init => field = Between(value, -100, 600);
    } = 300;

    /// <summary>Stop line for dogs at risk in heat; 28.0 °C by default.</summary>
    public int StopForAtRiskFromTenthsC
    {
        get;
        init => field = Between(value, -100, 600);
    } = 280;

    /// <summary>A reading older than this says nothing about now; 4 hours by default.</summary>
    public int ReadingGoodForHours
    {
        get;
        init => field = Between(value, 1, 24);
    } = 4;

    /// <summary>First month of the season in which a day may be hot; 5 (May) by default.</summary>
    public int HotSeasonFromMonth
    {
        get;
        init => field = Between(value, 1, 12);
    } = 5;

    /// <summary>Last month of the season in which a day may be hot; 9 (September) by default. May be before the first month: the season then spans the new year.</summary>
    public int HotSeasonToMonth
    {
        get;
        init => field = Between(value, 1, 12);
    } = 9;

    /// <summary>Modules that are renewed each spring may be renewed from the first of this month; 3 (March) by default.</summary>
    public int RenewFromMonth
    {
        get;
        init => field = Between(value, 1, 12);
    } = 3;

    /// <summary>Modules that are renewed each spring must be renewed by the first of this month; 5 (May) by default.</summary>
    public int RenewByMonth
    {
        get;
        init => field = Between(value, 1, 12);
    } = 5;

    /// <summary>Above this weight in kilograms nobody lifts a dog alone; 25 by default.</summary>
    public int LiftAloneUpToKg
    {
        get;
        init => field = Between(value, 1, 120);
    } = 25;

    /// <summary>Days in which a declared or exceptional clearance's modules are due; 30 by default.</summary>
    public int ModulesDueInDays
    {
        get;
        init => field = Between(value, 0, 365);
    } = 30;

    /// <summary>Whether a clearance of somebody under 18 holds only with a senior in the building. Local law on young workers comes first.</summary>
    public bool Under18OnlyWithSeniorIn { get; init; } = true;

    /// <summary>Incidents that stop the clearances concerned at once, whatever their severity.</summary>
    public Listed<IncidentKind> CriticalKinds { get; init; } =
    [
        IncidentKind.SkinOpened,
        IncidentKind.Burn,
        IncidentKind.EyeInjury,
        IncidentKind.HeatIllness,
        IncidentKind.FallOrHanging,
        IncidentKind.Escape,
        IncidentKind.LeftInDryer,
    ];

    /// <summary>Whether an incident of this kind and severity is critical; a near miss never is.</summary>
    public bool IsCritical(IncidentKind kind, Severity severity) =>
        severity != Severity.NearMiss && (severity == Severity.Serious || CriticalKinds.Contains(kind));

    /// <summary>Whether days of this month may be hot.</summary>
    public bool MayBeHot(DateOnly day) =>
        HotSeasonFromMonth <= HotSeasonToMonth
            ? day.Month >= HotSeasonFromMonth && day.Month <= HotSeasonToMonth
            : day.Month >= HotSeasonFromMonth || day.Month <= HotSeasonToMonth;

    private static int Between(int value, int least, int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, most);
        return value;
    }
}

/// <summary>What went wrong, or nearly.</summary>
public enum IncidentKind
{
    /// <summary>Skin opened through.</summary>
    SkinOpened,

    /// <summary>A nick or graze that did not open the skin through.</summary>
    Nick,

    /// <summary>Red or sore skin after clipping; often shows a day or two later.</summary>
    RedSkin,

    /// <summary>A nail cut to the quick.</summary>
    NailQuick,

    /// <summary>A burn by blade, water, dryer or ground.</summary>
    Burn,

    /// <summary>An eye hurt by tool, product, hair or loop.</summary>
    EyeInjury,

    /// <summary>Signs of heat illness.</summary>
    HeatIllness,

    /// <summary>A fall, or hanging from the table.</summary>
    FallOrHanging,

    /// <summary>The dog got away.</summary>
    Escape,

    /// <summary>A dog left unwatched in an enclosed dryer.</summary>
    LeftInDryer,

    /// <summary>A bite, to a person or another dog. What happened to a person goes into the accident book.</summary>
    Bite,

    /// <summary>The wrong dog or the wrong clip.</summary>
    WrongDogOrClip,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>How bad an incident was for the dog.</summary>
public enum Severity
{
    /// <summary>It harmed nobody; it never lowers anything.</summary>
    NearMiss,

    /// <summary>Harm that needed little or no care.</summary>
    Slight,

    /// <summary>Harm that needed care here or a call to the vet.</summary>
    Moderate,

    /// <summary>Harm that a vet had to treat, or a dog in danger; always critical.</summary>
    Serious,
}
