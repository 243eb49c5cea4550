using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Standings;

namespace Academy.Web.Features.Decisions;

/// <summary>What every form about one person brings along.</summary>
public abstract class PersonForm
{
    public Guid Operation { get; set; }

    /// <summary>The version of the person that the form was shown at.</summary>
    public long Version { get; set; }
}

/// <summary>A signature: the password again.</summary>
public abstract class SignedForm : PersonForm
{
    public string? Password { get; set; }
}

/// <summary>What a clearance is limited to, as typed.</summary>
public sealed class LimitsForm
{
    public DateOnly? Until { get; set; }

    public bool NotOnHotDays { get; set; }

    [Range(1, 120, ErrorMessage = "Up to: write 1 to 120 kg, or nothing for any weight")]
    public int? UpToKg { get; set; }

    public bool OnlyWithSeniorIn { get; set; }

    /// <summary>Whether anything is limited.</summary>
    public bool IsSet => Until is not null || NotOnHotDays || UpToKg is not null || OnlyWithSeniorIn;

    internal Limits Read() => new(Until, NotOnHotDays, UpToKg, OnlyWithSeniorIn);

    internal static LimitsForm Of(Limits limits) =>
        new()
        {
            Until = limits.Until,
            NotOnHotDays = limits.NotOnHotDays,
            UpToKg = limits.UpToKg,
            OnlyWithSeniorIn = limits.OnlyWithSeniorIn,
        };
}

/// <summary>One skill on the form, chosen or not, with its own limits.</summary>
public sealed class SkillChoice
{
    public string Skill { get; set; } = "";

    public bool Chosen { get; set; }

    public LimitsForm Limits { get; set; } = new();

    internal ClearanceAsked Ask(DecisionId id, Standing standing) => new(id, standing, Limits.Read());

    /// <summary>Every skill that may be signed, with the limits in force.</summary>
    internal static IList<SkillChoice> Of(IEnumerable<Standing> standings) =>
        [
            .. PersonDecideView
                .ToSign(standings)
                .Select(standing => new SkillChoice
                {
                    Skill = standing.Skill.Value,
                    Limits = LimitsForm.Of(standing.Tally.Clearance?.Limits ?? Academy.Competence.Decisions.Limits.None),
                }),
        ];
}

/// <summary>One signature over one or several clearances.</summary>
public sealed class SignForm : SignedForm
{
    public IList<SkillChoice> Skills { get; set; } = [];
}

/// <summary>A clearance against the rules: one skill, with a written reason.</summary>
public sealed class AgainstForm : SignedForm
{
    public LimitsForm Limits { get; set; } = new();

    [StringLength(2000, ErrorMessage = "Reason: at most 2000 letters")]
    public string? Reason { get; set; }
}

/// <summary>Not yet, with words to the person.</summary>
public sealed class RefuseForm : PersonForm
{
    [StringLength(2000, ErrorMessage = "Words: at most 2000 letters")]
    public string? Says { get; set; }
}

/// <summary>Stopping clearances, or lifting the stop: one or several skills, one reason.</summary>
public sealed class StopForm : SignedForm
{
    [Required(ErrorMessage = "Skills: choose at least one"), MinLength(1, ErrorMessage = "Skills: choose at least one")]
    public string[]? Skills { get; set; }

    [StringLength(2000, ErrorMessage = "Reason: at most 2000 letters")]
    public string? Reason { get; set; }
}
