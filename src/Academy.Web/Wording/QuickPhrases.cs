namespace Academy.Web.Wording;

/// <summary>Words that are tapped instead of typed.</summary>
/// <param name="Code">What the record keeps; never changes, so that old records stay readable.</param>
/// <param name="Words">What the person reads.</param>
public sealed record Phrase(string Code, string Words);

/// <summary>The quick phrases. They are common practice of the trade, no published source, unless a module says more.</summary>
public static class QuickPhrases
{
    /// <summary>For whoever logs a groom.</summary>
    public static IReadOnlyList<Phrase> Groom { get; } =
    [
        new("settled", "Settled once on the table"),
        new("took-breaks", "Took breaks"),
        new("two-held", "Two people held"),
        new("stopped-for-panting", "Stopped for panting, cooled, went on when it had settled"),
        new("dryer-from-afar", "Dryer low and from afar"),
        new("blades-changed", "Changed blades to keep them cool"),
        new("nails-in-two-goes", "Nails in two goes"),
        new("mats-clipped-off", "Mats clipped off, not brushed out"),
        new("face-left", "Face left for another day"),
        new("skin-shown", "Skin shown to the dog's owner"),
        new("after-care-told", "After-care told at pick-up"),
        new("had-enough", "Ended early: the dog had had enough"),
        new("sent-to-the-vet", "Ended early: sent to the vet"),
    ];

    /// <summary>For the senior who signs, to the junior: what to practise next.</summary>
    public static IReadOnlyList<Phrase> SignOff { get; } =
    [
        new("nozzle-moving", "Nozzle a hand's width off and moving"),
        new("dry-at-the-skin", "Check dryness at the skin, with the comb"),
        new("blade-on-the-wrist", "Feel the blade on your wrist before each new part"),
        new("skin-flat", "Skin flat before the blade, folds covered"),
        new("scissors-closed", "Scissors closed between cuts, tips away from the eye"),
        new("no-scissors-in-mats", "No scissors into a mat: clip it off"),
        new("part-by-part", "Brush part by part down to the skin"),
        new("small-steps-on-nails", "Nails in small steps"),
        new("look-before-water", "Skin, ears, pads and lumps before the water"),
        new("stop-at-the-first-sign", "Stop at the first sign of stress, not the third"),
        new("offer-water", "Offer water at each of the three points"),
        new("hand-on-the-dog", "A hand on the dog as long as it stands on the table"),
        new("ask-sooner", "Ask sooner: asking costs no marks"),
        new("go-on-like-this", "Go on just like this"),
    ];

    private static readonly Dictionary<string, string> ByCode = Groom
        .Concat(SignOff)
        .ToDictionary(phrase => phrase.Code, phrase => phrase.Words, StringComparer.Ordinal);

    /// <summary>The words of a code; a code that is no longer offered reads as itself.</summary>
    public static string Of(string code) => ByCode.GetValueOrDefault(code, code);
}
