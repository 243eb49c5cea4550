using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.SignOffs;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace Academy.Web.Features.SignOffs;

/// <summary>A sign-off as a senior taps it.</summary>
public sealed class SignForm
{
    private const int MostLetters = 2000;

    public Guid Operation { get; set; }

    public Guid Id { get; set; }

    public long Version { get; set; }

    public string? Level { get; set; }

    public string? Handling { get; set; }

    public string? Preparation { get; set; }

    public string? Tools { get; set; }

    public string? SkinSafety { get; set; }

    public string? Finish { get; set; }

    public string? Comfort { get; set; }

    public IList<string> NotSuitable { get; set; } = [];

    public IList<string> Phrases { get; set; } = [];

    public string? ToJunior { get; set; }

    public bool Watched { get; set; }

    public Guid? Replaces { get; set; }

    public string? Why { get; set; }

    /// <summary>A form with nothing chosen, or with what the sign-off in force says where that is to be corrected.</summary>
    public static SignForm For(PartToSign part, Guid id, Guid operation)
    {
        var form = new SignForm
        {
            Id = id,
            Operation = operation,
            Version = part.Known.Version,
        };
        if (part.InForce is { } signed)
            form.TakeFrom(signed);
        return form;
    }

    public void MeetAll() => Take(Criteria.AllMet);

    /// <summary>What is typed, not judged yet.</summary>
    public SignOffDraft Draft(PartToSign part) =>
        new(
            new SignOffId(Id),
            part.Subject.Id,
            Watched,
            Typed.Choice<SupportLevel>(Level),
            new Criteria(Of(Handling), Of(Preparation), Of(Tools), Of(SkinSafety), Of(Finish), Of(Comfort)),
            NotSuitable
                .Select(code => new SkillCode(code))
                .Where(code => part.Groom.SkillsOf(part.Subject.Id).Contains(code))
                .Distinct()
                .ToListed(),
            Phrases
                .Where(code => QuickPhrases.SignOff.Any(phrase => phrase.Code == code))
                .Distinct(StringComparer.Ordinal)
                .ToListed(),
            new Words(ToJunior?.Trim() ?? ""),
            Replaces is { } replaced ? new SignOffId(replaced) : null,
            new Words(Why?.Trim() ?? "")
        );

    /// <summary>What no rule speaks of: how long words may be.</summary>
    public void Check(ModelStateDictionary wrong)
    {
        foreach (var (field, text) in new[] { (nameof(ToJunior), ToJunior), (nameof(Why), Why) })
            if (text?.Length > MostLetters)
                wrong.AddModelError($"Form.{field}", $"Write at most {MostLetters} letters here.");
    }

    /// <summary>The field that a reason is about; none for a reason about the whole.</summary>
    public static string FieldOf(Reason reason) =>
        reason switch
        {
            LevelNotChosen => "Form.Level",
            CriterionNotSet unset => $"Form.{unset.Criterion}",
            SignerDidNotWatch => "Form.Watched",
            WordsNeeded { For: WordsFor.NotYet } => "Form.ToJunior",
            WordsNeeded { For: WordsFor.Correction } => "Form.Why",
            WordsNeeded { For: WordsFor.Incident } => "Incident.WhatHappened",
            InTheFuture => "Incident.NoticedOn",
            _ => "",
        };

    private void TakeFrom(SignOff signed)
    {
        Replaces = signed.Id.Value;
        Level = signed.Level.ToString();
        Take(signed.Criteria);
        NotSuitable = [.. signed.NotSuitable.Select(skill => skill.Value)];
        Phrases = [.. signed.Phrases];
        ToJunior = signed.ToJunior.Text;
    }

    private void Take(Criteria criteria) =>
        (Handling, Preparation, Tools, SkinSafety, Finish, Comfort) = (
            criteria.Handling.ToString(),
            criteria.Preparation.ToString(),
            criteria.Tools.ToString(),
            criteria.SkinSafety.ToString(),
            criteria.Finish.ToString(),
            criteria.Comfort.ToString()
        );

    private static Mark Of(string? mark) => Typed.Choice<Mark>(mark) ?? Mark.Unset;
}
