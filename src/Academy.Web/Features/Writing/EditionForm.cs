using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace Academy.Web.Features.Writing;

/// <summary>What is said of an edition when it is published: what changed, and whether it can hurt not to know it.</summary>
public sealed class EditionForm
{
    public const string Safety = "safety";
    public const string WordsOnly = "words";

    [StringLength(2000, ErrorMessage = "What changed: at most 2,000 letters")]
    public string? Change { get; set; }

    /// <summary><see cref="Safety"/> or <see cref="WordsOnly"/>; null where neither was chosen.</summary>
    public string? Kind { get; set; }

    public DateOnly? CatchUpBy { get; set; }

    /// <summary>The save that was seen.</summary>
    public long Version { get; set; }

    public bool IsSafety => Kind == Safety;

    public static IReadOnlyList<Pick> Kinds { get; } =
    [
        new(WordsOnly, "Better words only", "Older passes go on counting."),
        new(
            Safety,
            "Something that can hurt a dog or a person",
            "Whoever passed an older edition catches up with a short quiz by the day below."
        ),
    ];

    internal static EditionForm Of(Draft draft, DateOnly today) =>
        new()
        {
            Change = draft.Change,
            Kind =
                draft.CatchUpBy is not null ? Safety
                : draft.Change.Length > 0 ? WordsOnly
                : null,
            CatchUpBy = draft.CatchUpBy ?? today.AddDays(Publishing.UsualCatchUp),
            Version = draft.Version,
        };

    /// <summary>The draft as it would be published with what is said here.</summary>
    internal Draft Over(Draft draft, Competence.Salons.SalonBook book) =>
        draft.Numbered(book, IsSafety) with
        {
            Change = Change?.Trim() ?? "",
            CatchUpBy = IsSafety ? CatchUpBy : null,
        };

    /// <summary>Asks what the rules cannot: whether anything was chosen at all.</summary>
    internal void Check(bool isFirst, ModelStateDictionary state)
    {
        if (!isFirst && Kind is not (Safety or WordsOnly))
            state.AddModelError("Form.Kind", "What kind of change: choose one");
    }

    /// <summary>Puts each reason beside the field that it is about.</summary>
    internal static void Tell(IEnumerable<Reason> reasons, Names names, ModelStateDictionary state)
    {
        foreach (var reason in reasons)
            state.AddModelError(
                reason switch
                {
                    WordsNeeded => "Form.Change",
                    CatchUpDayNeeded => "Form.CatchUpBy",
                    _ => "",
                },
                Say.Reason(reason, names)
            );
    }
}
