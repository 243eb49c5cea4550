using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Web.Wording;
using Cut = Academy.Competence.Trade.Blades;

namespace Academy.Web.Features.Grooms;

/// <summary>A groom as told, line by line.</summary>
internal static class ToldWords
{
    /// <summary>What is said once it is kept: who is asked now, or who will see that it was done alone.</summary>
    public static string Kept(Groom told, Granted granted, SalonBook book) =>
        told.Watcher is { } watcher ? $"Kept. {book.Find(watcher)?.Name} is asked to sign it off."
        : granted.Facts.OfType<GroomFlagged>().Any(flagged => !flagged.Skills.IsEmpty)
            ? "Kept as it was. The owner sees that it was done alone."
        : "Kept.";

    public static IEnumerable<ToldLine> Of(Groom groom, Names names)
    {
        yield return new("Groomed by", WhoOf(groom, names));
        yield return new("Watched by", groom.Watcher is { } watcher ? names.Of(watcher) : "nobody");
        yield return new(
            "Time",
            $"{names.Time.Clock(groom.StartedAt)} to {names.Time.Clock(groom.EndedAt)}, {Minutes(groom)}{(groom.EndedEarly ? ", ended early" : "")}"
        );
        yield return new("Coat", $"{Counts.And([.. groom.Coats.Select(names.Of)])}, {Say.Word(groom.Condition)}; {groom.Breed}");
        if (!groom.Parts.IsEmpty)
            yield return new("Done", PartsOf(groom, names));
        if (!groom.Blades.IsEmpty)
            yield return new("Blades", string.Join(", ", groom.Blades.Select(blade => blade == Cut.Comb ? "guard comb" : blade)));
        if (!groom.Hazards.IsEmpty)
            yield return new("Hazards", string.Join(", ", groom.Hazards.Select(names.Of)));
        if (!groom.Consents.IsEmpty)
            yield return new("Owner agreed to", string.Join("; ", groom.Consents.Select(Say.Word)));
        if (!groom.Checks.IsEmpty)
            yield return new(
                "Welfare checks",
                string.Join("; ", groom.Checks.Select(made => $"{Say.Word(made.Check)} {names.Time.Clock(made.At)}"))
            );
        yield return new("Signs seen", groom.Signs.IsEmpty ? "none" : string.Join("; ", groom.Signs.Select(Say.Word)));
        if (groom.Room is { } room)
            yield return new(
                "Room",
                $"{Counts.Celsius(room.TenthsC)}{(room.HumidityPct is { } percent ? $", {percent} %" : "")}, read {names.Time.At(room.At)}"
            );
        if (!groom.Phrases.IsEmpty)
            yield return new("In short", string.Join("; ", groom.Phrases.Select(QuickPhrases.Of)));
    }

    /// <summary>What a senior would look for and nobody wrote down.</summary>
    public static IEnumerable<string> NotNoted(Groom groom)
    {
        WelfareCheck[] usual =
        [
            WelfareCheck.ArrivalPads,
            WelfareCheck.WaterBeforeBath,
            WelfareCheck.WaterAfterBath,
            WelfareCheck.WaterAfterGroom,
        ];
        return usual
            .Where(check => groom.Checks.All(made => made.Check != check))
            .Select(Say.Word)
            .Concat(
                ConsentAsked.All.Where(asked => IsLacking(asked, groom)).Select(asked => $"consent: {Say.Word(asked.Consent)}")
            );
    }

    private static bool IsLacking(ConsentAsked asked, Groom groom) =>
        asked.AppliesTo(groom) && !groom.Consents.Contains(asked.Consent);

    private static string WhoOf(Groom groom, Names names) =>
        (groom.Doers.ToList(), groom.WholeFinishBy) switch
        {
            ([var one], { }) => $"{names.Of(one)}, the whole groom",
            ([var one], null) => $"{names.Of(one)}, parts of it",
            (var several, { } finisher) =>
                $"{Counts.And([.. several.Select(names.Of)])}; {names.Of(finisher)} did the whole finish",
            (var several, null) => $"{Counts.And([.. several.Select(names.Of)])}, shared",
        };

    private static string PartsOf(Groom groom, Names names) =>
        groom.Parts.All(part => part.Doer == groom.By)
            ? string.Join(", ", groom.Parts.Select(part => names.Of(part.Technique)))
            : string.Join(", ", groom.Parts.Select(part => $"{names.Of(part.Technique)} ({names.Of(part.Doer)})"));

    private static string Minutes(Groom groom) => Counts.Of((int)(groom.EndedAt - groom.StartedAt).TotalMinutes, "minute");
}
