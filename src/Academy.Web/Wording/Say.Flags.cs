using Academy.Competence.Grooms;

namespace Academy.Web.Wording;

// Grooms done alone by somebody who was not alone for them.
public static partial class Say
{
    /// <summary>"Pim did this alone, and was not alone for it when it began: wire and hand-stripping."</summary>
    public static string Flag(FlagStory flag, Names names) =>
        $"{names.Of(flag.Person)} did this alone, and was not alone for it when it began: {Counts.And([.. flag.Skills.Select(names.Of)])}.";

    /// <summary>"Ines spoke about it 10:02 today."; null while nobody has.</summary>
    public static string? SpokenAbout(FlagStory flag, Names names) =>
        flag.SpokenAt is { } at
            ? $"{(flag.SpokenBy is { } by ? names.Of(by) : "The owner")} spoke about it {names.Time.At(at)}."
            : null;
}
