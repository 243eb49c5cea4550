namespace Academy.Web.Features.Shared;

/// <summary>One choice of a group: what is sent, what is read, and what may stand beside it.</summary>
/// <param name="Value">What the form sends.</param>
/// <param name="Words">What the person reads.</param>
/// <param name="Note">A quiet line below.</param>
/// <param name="Coat">The coat whose swatch stands above the word.</param>
/// <param name="Number">A number in front, as the support levels have.</param>
/// <param name="Group">The small heading that it stands under, where choices are sorted; those of one group follow each other.</param>
/// <param name="When">Values, apart by spaces, of which one must be chosen in the form before this one is asked; always without a script.</param>
/// <param name="IsMet">Whether one of them is chosen as the page is written.</param>
public sealed record Pick(
    string Value,
    string Words,
    string? Note = null,
    string? Coat = null,
    string? Number = null,
    string? Group = null,
    string? When = null,
    bool IsMet = false
);
