using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;

namespace Academy.Web.Features.Thresholds;

/// <summary>A skill's rules as the owner types them.</summary>
public sealed class ThresholdForm : BookForm, IValidatableObject
{
    [Required(ErrorMessage = "Row: choose one")]
    public string? Profile { get; set; }

    [Range(2, 1000, ErrorMessage = "Fine: write 2 to 1000")]
    public int? FineOneIn { get; set; }

    [Range(1, RowProfile.MostMarks, ErrorMessage = "Marks taken: write 1 to 200")]
    public int? Takes { get; set; }

    [Range(1, RowProfile.MostMarks, ErrorMessage = "Marks: write 1 to 200")]
    public int? Marks { get; set; }

    [Required(ErrorMessage = "Breeds: write a number"), Range(0, Threshold.Window, ErrorMessage = "Breeds: write 0 to 20")]
    public int? Breeds { get; set; }

    [Required(ErrorMessage = "Seniors: write a number"), Range(0, 6, ErrorMessage = "Seniors: write 0 to 6")]
    public int? Seniors { get; set; }

    [
        Required(ErrorMessage = "Recent grooms: write a number"),
        Range(0, Threshold.MostRecentGrooms, ErrorMessage = "Recent grooms: write 0 to 10")
    ]
    public int? RecentGrooms { get; set; }

    [Required(ErrorMessage = "Days: write a number"), Range(1, 3660, ErrorMessage = "Days: write 1 to 3660")]
    public int? RecentDays { get; set; }

    public bool OnFullCoat { get; set; }

    public bool IsOn { get; set; }

    [Required(ErrorMessage = "From: write the first day")]
    public DateOnly? From { get; set; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Profile == RowChoices.Own && (FineOneIn is null || Takes is null || Marks is null))
            yield return new("Own numbers: write all three", [nameof(FineOneIn)]);
        if (Profile == RowChoices.Own && FineOneIn <= Takes + 1)
            yield return new(
                $"Fine: with {Takes} marks taken write more than {Takes + 1}, or the row empties for the very people whom it should let through",
                [nameof(FineOneIn)]
            );
        if (Profile is not (RowChoices.Own or RowChoices.None) && RowChoices.Find(Profile) is null)
            yield return new("Row: choose one", [nameof(Profile)]);
    }

    internal Threshold Read(SkillCode skill, int version) =>
        new(
            skill,
            version,
            From!.Value,
            RowOf(),
            Profile == RowChoices.None ? 0 : Breeds!.Value,
            Profile == RowChoices.None ? 0 : Seniors!.Value,
            RecentGrooms!.Value,
            RecentDays!.Value,
            OnFullCoat,
            IsOn
        );

    internal static ThresholdForm Of(Threshold now, DateOnly today) =>
        new()
        {
            Profile = RowChoices.Of(now.Row),
            FineOneIn = now.Row is { } row ? (int)Math.Round(1 / row.P0, MidpointRounding.AwayFromZero) : null,
            Takes = now.Row?.MarksTaken,
            Marks = now.Row?.MarksToFill,
            Breeds = now.Breeds,
            Seniors = now.Seniors,
            RecentGrooms = now.RecentGrooms,
            RecentDays = now.RecentDays,
            OnFullCoat = now.OnFullCoat,
            IsOn = now.IsOn,
            From = today,
        };

    private RowProfile? RowOf() =>
        Profile switch
        {
            RowChoices.None => null,
            RowChoices.Own => new RowProfile(1.0 / FineOneIn!.Value, Takes!.Value, Marks!.Value),
            _ => RowChoices.Find(Profile),
        };
}
