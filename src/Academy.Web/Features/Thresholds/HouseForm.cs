using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;

namespace Academy.Web.Features.Thresholds;

/// <summary>The salon, its vet and its own numbers, as typed. Temperatures are typed as people read them.</summary>
public sealed class HouseForm : BookForm, IValidatableObject
{
    [StringLength(80, ErrorMessage = "Salon: at most 80 letters")]
    public string? Name { get; set; }

    [StringLength(80, ErrorMessage = "Vet: at most 80 letters")]
    public string? VetName { get; set; }

    [StringLength(40, ErrorMessage = "Phone: at most 40 letters")]
    public string? VetPhone { get; set; }

    public string? Hot { get; set; }
    public string? HotAtRisk { get; set; }
    public string? Stop { get; set; }
    public string? StopAtRisk { get; set; }

    [Required(ErrorMessage = "Heat index: write a number"), Range(60, 120, ErrorMessage = "Heat index: write 60 to 120 °F")]
    public int? HotIndexF { get; set; }

    [Required(ErrorMessage = "Reading: write a number"), Range(1, 24, ErrorMessage = "Reading: write 1 to 24 hours")]
    public int? ReadingHours { get; set; }

    [Required(ErrorMessage = "Hot season, from: choose a month"), Range(1, 12, ErrorMessage = "Hot season, from: choose a month")]
    public int? HotFromMonth { get; set; }

    [Required(ErrorMessage = "Hot season, to: choose a month"), Range(1, 12, ErrorMessage = "Hot season, to: choose a month")]
    public int? HotToMonth { get; set; }

    [Required(ErrorMessage = "Renewed from: choose a month"), Range(1, 12, ErrorMessage = "Renewed from: choose a month")]
    public int? RenewFromMonth { get; set; }

    [Required(ErrorMessage = "Renewed by: choose a month"), Range(1, 12, ErrorMessage = "Renewed by: choose a month")]
    public int? RenewByMonth { get; set; }

    [Required(ErrorMessage = "Elderly: write a number"), Range(1, 20, ErrorMessage = "Elderly: write 1 to 20 years")]
    public int? ElderlyYears { get; set; }

    [Required(ErrorMessage = "Very young: write a number"), Range(1, 52, ErrorMessage = "Very young: write 1 to 52 weeks")]
    public int? YoungWeeks { get; set; }

    [Required(ErrorMessage = "Lifting: write a number"), Range(1, 60, ErrorMessage = "Lifting: write 1 to 60 kg")]
    public int? LiftKg { get; set; }

    [Required(ErrorMessage = "Modules due: write a number"), Range(0, 365, ErrorMessage = "Modules due: write 0 to 365 days")]
    public int? ModulesDays { get; set; }

    public bool Under18WithSenior { get; set; }

    public string[] Critical { get; set; } = [];

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        foreach (var (field, words, typed) in Temperatures())
            if (Typed.TenthsC(typed) is not (>= 100 and <= 450))
                yield return new($"{words}: write 10 to 45 °C", [field]);
        if (Typed.TenthsC(HotAtRisk) > Typed.TenthsC(Hot))
            yield return new("Hot day for dogs at risk: not above the one for every dog", [nameof(HotAtRisk)]);
        if (Typed.TenthsC(StopAtRisk) > Typed.TenthsC(Stop))
            yield return new("Stop line for dogs at risk: not above the one for every dog", [nameof(StopAtRisk)]);
        if (Typed.TenthsC(Stop) <= Typed.TenthsC(Hot))
            yield return new("Stop line: above the hot day", [nameof(Stop)]);
        if (Typed.TenthsC(StopAtRisk) <= Typed.TenthsC(HotAtRisk))
            yield return new("Stop line for dogs at risk: above their hot day", [nameof(StopAtRisk)]);
    }

    internal HouseRules Read(HouseRules before) =>
        before with
        {
            HotFromTenthsC = Typed.TenthsC(Hot)!.Value,
            HotForAtRiskFromTenthsC = Typed.TenthsC(HotAtRisk)!.Value,
            StopFromTenthsC = Typed.TenthsC(Stop)!.Value,
            StopForAtRiskFromTenthsC = Typed.TenthsC(StopAtRisk)!.Value,
            HotFromIndexF = HotIndexF!.Value,
            ReadingGoodForHours = ReadingHours!.Value,
            HotSeasonFromMonth = HotFromMonth!.Value,
            HotSeasonToMonth = HotToMonth!.Value,
            RenewFromMonth = RenewFromMonth!.Value,
            RenewByMonth = RenewByMonth!.Value,
            ElderlyFromYears = ElderlyYears!.Value,
            VeryYoungUntilWeeks = YoungWeeks!.Value,
            LiftAloneUpToKg = LiftKg!.Value,
            ModulesDueInDays = ModulesDays!.Value,
            Under18OnlyWithSeniorIn = Under18WithSenior,
            CriticalKinds = Enum.GetValues<IncidentKind>()
                .Where(kind => Critical.Contains(kind.ToString(), StringComparer.Ordinal))
                .ToListed(),
        };

    private IEnumerable<(string Field, string Words, string? Typed)> Temperatures() =>
        [
            (nameof(Hot), "Hot day", Hot),
            (nameof(HotAtRisk), "Hot day for dogs at risk", HotAtRisk),
            (nameof(Stop), "Stop line", Stop),
            (nameof(StopAtRisk), "Stop line for dogs at risk", StopAtRisk),
        ];
}
